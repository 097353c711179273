package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;

/** Saws a board along its cut tree: places, cuts in order, offcuts, all with the kerf taken off again. */
final class Sawing {
    private final PackingJob job;
    private final int kerf;
    private final List<PlacedPiece> pieces = new ArrayList<>();
    private final List<Cut> cuts = new ArrayList<>();
    private final List<Area> offcuts = new ArrayList<>();

    private Sawing(PackingJob job) {
        this.job = job;
        this.kerf = job.allowance().kerf();
    }

    static PlannedSheet of(PackingJob job, CutNode tree) {
        var sawing = new Sawing(job);
        int trim = job.allowance().trim();
        sawing.saw(tree, trim, trim);
        return new PlannedSheet(sawing.pieces, sawing.cuts, sawing.offcuts);
    }

    private void saw(CutNode node, int x, int y) {
        if (node instanceof CutNode.Piece piece) {
            var label = job.types().get(piece.type()).line().label();
            pieces.add(new PlacedPiece(label, real(piece, x, y), piece.turned()));
        } else if (node instanceof CutNode.Rest rest) {
            keep(real(rest, x, y));
        } else if (node instanceof CutNode.Split split) {
            divide(split, x, y);
        }
    }

    private void keep(Area rest) {
        if (rest.length() >= PlannedSheet.NARROWEST_OFFCUT && rest.width() >= PlannedSheet.NARROWEST_OFFCUT) {
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
            cuts.add(new Cut(cuts.size() + 1, split.direction(), strip(split, x, y, at)));
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
        var allowance = job.allowance();
        return new Area(x, y, allowance.real(node.length()), allowance.real(node.width()));
    }
}
