package org.standwright.sheet.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.kit.Saw;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * A break-down cut beside a piece for which its board has too little room, and which alone stands against the piece.
 *
 * @param turned whether the piece lies across the board
 * @param along length of the cut, units
 * @param room from the piece to the board's edge, the saw's own kerf taken off, units
 * @param taken what the cut takes of it, units
 */
record TightCut(Direction direction, boolean turned, int along, int room, int taken) {

    /** The one with the least shortage, if any. */
    static Optional<TightCut> of(PackingJob job, PieceType type) {
        return job.kinds().stream()
                .flatMap(kind -> Stream.of(false, true)
                        .filter(turned -> type.fits(kind, turned))
                        .flatMap(turned -> Stream.of(Direction.values())
                                .flatMap(first -> of(job.rules(), type, kind, turned, first).stream())))
                .min(Comparator.comparingInt(TightCut::shortage).thenComparingInt(TightCut::along));
    }

    private static Optional<TightCut> of(
            CutRules rules, PieceType type, BoardKind kind, boolean turned, Direction first) {
        boolean rip = first == Direction.RIP;
        int beside = kind.width() - type.across(turned);
        int end = kind.length() - type.along(turned);
        if (!rules.begins(first, (rip ? end : beside) == 0)) {
            return Optional.empty();
        }
        var ripping = cut(rules, Direction.RIP, turned, rip ? kind.length() : type.along(turned), beside);
        var crosscutting = cut(rules, Direction.CROSSCUT, turned, rip ? type.across(turned) : kind.width(), end);
        if (ripping.isPossible() == crosscutting.isPossible()) {
            return Optional.empty();
        }
        return Optional.of(ripping.isPossible() ? crosscutting : ripping).filter(TightCut::isByHand);
    }

    private static TightCut cut(CutRules rules, Direction direction, boolean turned, int along, int room) {
        return new TightCut(direction, turned, along - rules.kerf(), room, rules.extra(direction, along));
    }

    private boolean isPossible() {
        return room == 0 || taken != CutRules.NONE && taken < room;
    }

    private boolean isByHand() {
        return taken != CutRules.NONE;
    }

    private int shortage() {
        return taken - room + 1;
    }

    String reason() {
        return "the " + word() + " beside it is " + up(along) + " mm long, which takes the break-down saw; its kerf and"
                + " what is recut on both sides of it take " + up(taken) + " mm beyond the saw's own kerf, but "
                + down(room) + " mm are left.";
    }

    List<String> waysOut(Saw saw) {
        var ways = new ArrayList<String>();
        boolean shorter = (direction == Direction.CROSSCUT) != turned;
        ways.add("Make it at least " + up(shortage()) + " mm " + (shorter ? "shorter." : "narrower."));
        var field = direction == Direction.RIP ? "longestRip" : "longestCrosscut";
        ways.add("Use a saw that makes the cut itself: \"" + field + "\": \"" + up(along) + " mm\".");
        double kerfs = saw.breakDown().orElseThrow().kerf() - SheetUnit.mm(SheetUnit.up(saw.kerf()));
        double allowance = (SheetUnit.mm(room - 1) - kerfs) / 2;
        if (allowance >= 0) {
            ways.add("Leave less to be recut: \"allowance\": \"" + rounded(allowance, RoundingMode.FLOOR) + " mm\".");
        }
        return ways;
    }

    private String word() {
        return direction == Direction.RIP ? "rip" : "crosscut";
    }

    private static String up(int units) {
        return rounded(SheetUnit.mm(units), RoundingMode.CEILING);
    }

    private static String down(int units) {
        return rounded(SheetUnit.mm(units), RoundingMode.FLOOR);
    }

    private static String rounded(double mm, RoundingMode mode) {
        return BigDecimal.valueOf(mm).setScale(2, mode).toPlainString();
    }
}
