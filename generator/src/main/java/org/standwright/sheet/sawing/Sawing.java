package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.CutNode;

/** Saws a board along its cut tree: places, cuts in order, offcuts, all with the kerf taken off again. */
public final class Sawing {
    private final List<CutLine> lines;
    private final int kerf;
    private final Keep keep;
    private final List<PlacedPiece> pieces = new ArrayList<>();
    private final List<Cut> cuts = new ArrayList<>();
    private final List<Area> offcuts = new ArrayList<>();

    private Sawing(List<CutLine> lines, int kerf, Keep keep) {
        this.lines = lines;
        this.kerf = kerf;
        this.keep = keep;
    }

    /**
     * @param from the board itself
     * @param lines by the tree's types
     */
    public static PlannedSheet of(StockSheet from, CutNode tree, List<CutLine> lines, Saw saw, Keep keep) {
        var sawing = new Sawing(lines, SheetUnit.up(saw.kerf()), keep);
        sawing.saw(
                tree, SheetUnit.up(saw.trim().left()), SheetUnit.up(saw.trim().bottom()));
        return new PlannedSheet(from, sawing.pieces, sawing.cuts, sawing.offcuts);
    }

    private void saw(CutNode node, int x, int y) {
        if (node instanceof CutNode.Piece piece) {
            var label = lines.get(piece.type()).label();
            pieces.add(new PlacedPiece(label, real(piece, x, y), piece.turned()));
        } else if (node instanceof CutNode.Rest rest) {
            keep(real(rest, x, y));
        } else if (node instanceof CutNode.Split split) {
            divide(split, x, y);
        }
    }

    private void keep(Area rest) {
        if (keep.isWorth(SheetUnit.mm(rest.length()), SheetUnit.mm(rest.width()))) {
            offcuts.add(rest);
        }
    }

    /** All parallel cuts first, then each strip by itself. */
    private void divide(CutNode.Split split, int x, int y) {
        boolean rip = split.direction() == Cut.Direction.RIP;
        var nodes = inCuttingOrder(split);
        int at = 0;
        for (var node : nodes.subList(0, nodes.size() - 1)) {
            at += CutNode.extent(node, split.direction());
            cuts.add(new Cut(
                    cuts.size() + 1,
                    split.direction(),
                    strip(split, x, y, at),
                    Cut.Tool.SAW,
                    Cut.Purpose.DIVIDE,
                    rip ? Edge.Y0 : Edge.X0,
                    CutNode.extent(node, split.direction()) - kerf));
        }
        at = 0;
        for (var node : nodes) {
            saw(node, rip ? x : x + at, rip ? y + at : y);
            at += CutNode.extent(node, split.direction());
        }
    }

    /** The kerf before {@code at}; narrower than the blade where the blade runs off the edge. */
    private Area strip(CutNode.Split split, int x, int y, int at) {
        var board = real(split, x, y);
        return split.direction() == Cut.Direction.RIP
                ? new Area(x, y + at - kerf, board.length(), Math.min(kerf, split.width() - at))
                : new Area(x + at - kerf, y, Math.min(kerf, split.length() - at), board.width());
    }

    /** Wide strips first, equal ones together, the rest at the far end. */
    private static List<CutNode> inCuttingOrder(CutNode.Split split) {
        var isRest = Comparator.comparing((CutNode node) -> node instanceof CutNode.Rest);
        var widest = Comparator.comparingInt((CutNode node) -> -CutNode.extent(node, split.direction()));
        return split.nodes().stream()
                .sorted(isRest.thenComparing(widest).thenComparingInt(Sawing::firstType))
                .toList();
    }

    private static int firstType(CutNode node) {
        if (node instanceof CutNode.Split split) {
            return split.nodes().stream().mapToInt(Sawing::firstType).min().orElseThrow();
        }
        return node instanceof CutNode.Piece piece ? piece.type() : Integer.MAX_VALUE;
    }

    private Area real(CutNode node, int x, int y) {
        return new Area(x, y, Math.max(0, node.length() - kerf), Math.max(0, node.width() - kerf));
    }
}
