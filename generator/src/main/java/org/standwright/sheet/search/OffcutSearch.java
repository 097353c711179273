package org.standwright.sheet.search;

import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.lane.LateAcceptance;
import org.standwright.sheet.lane.Layout;

/**
 * Clears as large a rectangle as it can from the boards of a layout, without another board: keeps a strip from side to
 * side of one board free and lays the pieces again; when that succeeds, tries a wider one.
 */
final class OffcutSearch {
    /** Tries that the steps are shared out to. */
    private static final int TRIES = 12;
    /** Share of what could still be gained below which it stops. */
    private static final double LEAST_GAIN = 1.0 / 64;

    private final Terms terms;
    private final LateAcceptance<Board> search;
    private Layout<Board> best;
    private long offcut;

    OffcutSearch(Terms terms, Layout<Board> complete, LateAcceptance<Board> search) {
        this.terms = terms;
        this.search = search;
        this.best = complete;
        this.offcut = complete.largestRest();
    }

    Layout<Board> run(int steps) {
        long most = freeArea();
        int left = steps;
        for (double share = 0.5; share > LEAST_GAIN && left > 0 && offcut < most; ) {
            long before = offcut;
            long wanted = offcut + Math.max(1, (long) (share * (most - offcut)));
            for (int kind = 0; kind < terms.tally.kinds() && offcut == before; kind++) {
                left -= keep(kind, true, wanted, steps / TRIES);
                if (offcut == before) {
                    left -= keep(kind, false, wanted, steps / TRIES);
                }
            }
            share = offcut == before ? share / 2 : share;
        }
        return best;
    }

    /** Area that no piece covers, kerf included, units². */
    private long freeArea() {
        return best.boards().stream()
                .mapToLong(board -> terms.kind(board.kind()).area() - board.pieceArea())
                .sum();
    }

    /** Tries to keep a strip of so much area on a board of this kind; returns the steps it took. */
    private int keep(int kind, boolean rip, long wanted, int steps) {
        int board = best.emptiest(one -> one == kind);
        if (board < 0 || terms.rules.first() == (rip ? First.CROSSCUT : First.RIP)) {
            return 0;
        }
        var size = terms.kind(kind);
        int kerf = terms.rules.kerf();
        int side = rip ? size.length() : size.width();
        int across = rip ? size.width() : size.length();
        int extra = rip ? terms.ripExtra(side) : terms.crosscutExtra(side);
        long strip = (wanted + side - kerf - 1) / (side - kerf) + kerf;
        if (extra < 0 || strip + extra >= across) {
            return 0;
        }
        search.beginInstead(best, board, owner -> Board.keeping(terms, kind, owner, rip, (int) strip));
        for (int step = 1; step <= steps; step++) {
            if (search.step()) {
                best = search.found().copy();
                best.dropUnused();
                offcut = best.largestRest();
                return step;
            }
        }
        return steps;
    }
}
