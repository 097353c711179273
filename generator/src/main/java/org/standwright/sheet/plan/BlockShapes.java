package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.sawing.Block;
import org.standwright.sheet.sawing.Block.Parting;

/**
 * Makes blocks of pieces. As a strip, m pieces take the sum of their sides and m - 1 kerfs; with every size enlarged by
 * a kerf, that is the sum of the enlarged sides. Cuts that are too long for the saw take more.
 *
 * @param boards that a block is to come from
 */
record BlockShapes(KerfAllowance allowance, List<BoardKind> boards, CutRules rules) {

    Block piece(CutLine line) {
        return Block.piece(line, length(line), width(line));
    }

    /** @param mayTurn whether the block's length may lie across the sheet's */
    Block of(Together group, List<CutLine> lines, boolean mayTurn) {
        var cuts = new BlockCuts(rules, mayTurn);
        return switch (group.kind()) {
            case ONE_STRIP ->
                new Block(lines, Parting.ON_SHEET, strip(pieces(lines), group.along(), group.labels(), cuts));
            case ONE_SHEET -> new Block(lines, Parting.ON_SHEET, new OneSheet(pieces(lines), boards, cuts).smallest());
            case ONE_BLANK -> {
                int over = 2 * SheetUnit.up(group.over());
                var apart = new BlockCuts(CutRules.free(rules.kerf()), false);
                var strip = strip(pieces(lines), group.along(), group.labels(), apart);
                yield new Block(lines, Parting.LATER, widened(strip, over));
            }
        };
    }

    /**
     * Two strips from one rip with the blade tilted: widths a and b, blank a + b - rise + kerf / cos(tilt), which
     * with a = b = L is 2 L - t tan(tilt) + k / cos(tilt) = w (own derivation). In the block each strip has the share
     * of the width that its long face has.
     *
     * @param rise by how much both overlap in the blank, mm
     * @param tilt of the blade from square, degrees
     */
    Block bevel(List<CutLine> lines, double rise, double tilt) {
        double first = lines.get(0).part().roughWidth();
        double second = lines.get(1).part().roughWidth();
        double blade = SheetUnit.mm(allowance.kerf()) / StrictMath.cos(StrictMath.toRadians(tilt));
        var label = lines.get(0).label() + " + " + lines.get(1).label();
        int width = allowance.enlarged(label, first + second - rise + blade);
        int length = length(lines.get(0));
        int share = (int) Math.round(width * first / (first + second));
        return new Block(
                lines,
                Parting.BEVEL,
                new CutNode.Split(
                        Direction.RIP,
                        length,
                        width,
                        List.of(
                                new CutNode.Piece(0, length, share, false),
                                new CutNode.Piece(1, length, width - share, false))));
    }

    private List<CutNode> pieces(List<CutLine> lines) {
        var pieces = new ArrayList<CutNode>();
        for (var line : lines) {
            pieces.add(new CutNode.Piece(pieces.size(), length(line), width(line), false));
        }
        return pieces;
    }

    /** The pieces one after the other; they have their other side in common. */
    private static CutNode strip(List<CutNode> pieces, Along along, List<String> labels, BlockCuts cuts) {
        var divide = along == Along.LENGTH ? Direction.CROSSCUT : Direction.RIP;
        var across = along == Along.LENGTH ? Direction.RIP : Direction.CROSSCUT;
        int common = CutNode.extent(pieces.get(0), across);
        if (pieces.stream().anyMatch(piece -> CutNode.extent(piece, across) != common)) {
            throw new ImpossiblePlanException(
                    "/cutting/together",
                    "pieces " + labels + " are no strip: they differ in "
                            + (along == Along.LENGTH ? "width." : "length."),
                    List.of("Keep only those together that agree, or on one sheet."));
        }
        long sum = (pieces.size() - 1L) * cuts.extra(divide, common)
                + pieces.stream()
                        .mapToLong(piece -> CutNode.extent(piece, divide))
                        .sum();
        return split(
                divide, divide == Direction.CROSSCUT ? sum : common, divide == Direction.RIP ? sum : common, pieces);
    }

    private static CutNode split(Direction direction, long length, long width, List<CutNode> nodes) {
        if (Math.max(length, width) > Integer.MAX_VALUE) {
            throw new ImpossiblePlanException(
                    "/cutting/together",
                    "a block of " + nodes.size() + " pieces is longer than any board.",
                    List.of("Keep fewer together."));
        }
        return CutNode.split(direction, (int) length, (int) width, nodes);
    }

    /** The same with so much more of both sides. */
    private static CutNode widened(CutNode strip, int over) {
        if (over == 0) {
            return strip;
        }
        long length = (long) strip.length() + over;
        long width = (long) strip.width() + over;
        var longer =
                split(Direction.CROSSCUT, length, strip.width(), List.of(strip, new CutNode.Rest(over, strip.width())));
        return split(Direction.RIP, length, width, List.of(longer, new CutNode.Rest((int) length, over)));
    }

    private int length(CutLine line) {
        return allowance.enlarged(line.label(), line.part().roughLength());
    }

    private int width(CutLine line) {
        return allowance.enlarged(line.label(), line.part().roughWidth());
    }
}
