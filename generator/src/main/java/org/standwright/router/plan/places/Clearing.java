package org.standwright.router.plan.places;

import org.standwright.sheet.lane.LateAcceptance;
import org.standwright.sheet.lane.Layout;

/**
 * Clears as large a rectangle as it can from the boards of a layout, without another board: keeps a strip from side to
 * side of one board free and lays the pieces again; when that succeeds, tries a wider one.
 */
final class Clearing {
    /** Tries that the steps are shared out to. */
    private static final int TRIES = 12;
    /** Share of what could still be gained below which it stops. */
    private static final double LEAST_GAIN = 1.0 / 64;

    private final Terms terms;
    private final LateAcceptance<Board> search;
    private Layout<Board> best;
    private long rest;

    Clearing(Terms terms, Layout<Board> complete, LateAcceptance<Board> search) {
        this.terms = terms;
        this.search = search;
        this.best = complete;
        this.rest = complete.largestRest();
    }

    Layout<Board> run(int steps) {
        int left = steps;
        for (double share = 0.5; share > LEAST_GAIN && left > 0; ) {
            long before = rest;
            for (int kind = 0; kind < terms.tally.kinds() && rest == before; kind++) {
                left -= keep(kind, true, share, steps / TRIES);
                if (rest == before) {
                    left -= keep(kind, false, share, steps / TRIES);
                }
            }
            share = rest == before ? share / 2 : share;
        }
        return best;
    }

    /** Tries to keep a strip free on a board of this kind; returns the steps it took. */
    private int keep(int kind, boolean alongWidth, double share, int steps) {
        int board = best.emptiest(one -> one == kind);
        if (board < 0) {
            return 0;
        }
        var size = terms.kind(kind);
        int spacing = terms.job.rules().kerf();
        int side = alongWidth ? size.length() : size.width();
        int across = alongWidth ? size.width() : size.length();
        long most = size.area() - best.board(board).pieceArea();
        long wanted = rest + Math.max(1, (long) (share * (most - rest)));
        long strip = (wanted + side - spacing - 1) / (side - spacing) + spacing;
        if (most <= rest || strip >= across) {
            return 0;
        }
        int left = (int) (across - strip);
        int length = alongWidth ? size.length() : left;
        int width = alongWidth ? left : size.width();
        search.beginInstead(best, board, owner -> Board.using(terms, kind, owner, length, width));
        for (int step = 1; step <= steps; step++) {
            if (search.step()) {
                best = search.found().copy();
                best.replaceEach(one -> one.opened(best.owner()));
                best.dropUnused();
                rest = best.largestRest();
                return step;
            }
        }
        return steps;
    }
}
