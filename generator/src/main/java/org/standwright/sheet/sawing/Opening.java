package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlacedPiece.Parting;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.CutNode;

/** Takes the kerf out of a cut tree, opens its blocks and puts its strips in cutting order. */
final class Opening {
    private final List<Block> blocks;
    private final int kerf;
    private final int smallest;

    private Opening(List<Block> blocks, Blades blades) {
        this.blocks = blocks;
        this.kerf = blades.kerf();
        this.smallest = blades.smallest();
    }

    static Goal of(CutNode tree, List<Block> blocks, Blades blades) {
        return new Opening(blocks, blades).open(tree);
    }

    private Goal open(CutNode node) {
        if (node instanceof CutNode.Piece piece) {
            return open(blocks.get(piece.type()), piece);
        }
        return node instanceof CutNode.Split split
                ? strips(split, inCuttingOrder(split).stream().map(this::open).toList())
                : new Goal.Left(node.length() - kerf, node.width() - kerf);
    }

    private Goal open(Block block, CutNode.Piece piece) {
        var inner = piece.turned() ? turned(block.inner()) : block.inner();
        var area = real(piece, 0, 0);
        return switch (block.parting()) {
            case NONE -> new Goal.Item(new PlacedPiece(block.label(), area, piece.turned()));
            case ON_SHEET -> inside(inner, block);
            case LATER -> blank(block, area, piece.turned(), Parting.LATER, held(inner, block, 0, 0));
            case BEVEL -> blank(block, area, piece.turned(), Parting.BEVEL, strips(block, area, piece.turned()));
        };
    }

    private static Goal blank(Block block, Area area, boolean turned, Parting parting, List<PlacedPiece> holds) {
        return new Goal.Item(new PlacedPiece(block.label(), area, turned, parting, holds));
    }

    /** What lies in a block stays in its order: the figure runs on. */
    private Goal inside(CutNode node, Block block) {
        if (node instanceof CutNode.Piece piece) {
            return new Goal.Item(piece(block, piece, 0, 0));
        }
        return node instanceof CutNode.Split split
                ? strips(
                        split,
                        split.nodes().stream().map(next -> inside(next, block)).toList())
                : new Goal.Left(node.length() - kerf, node.width() - kerf);
    }

    private PlacedPiece piece(Block block, CutNode.Piece piece, int x, int y) {
        return new PlacedPiece(block.pieces().get(piece.type()).label(), real(piece, x, y), piece.turned());
    }

    /** A break-down cut takes more than the kerf: all that the nodes leave of the split is shared among its cuts. */
    private Goal strips(CutNode.Split split, List<Goal> nodes) {
        int gaps = split.nodes().size() - 1;
        int taken = split.nodes().stream()
                .mapToInt(node -> CutNode.extent(node, split.direction()))
                .sum();
        int extra = CutNode.extent(split, split.direction()) - taken;
        if (extra % gaps != 0) {
            throw new IllegalArgumentException(
                    "cuts of a split of " + nodes.size() + " nodes take " + extra + " units beyond the kerf together.");
        }
        return new Goal.Strips(
                split.direction(), split.length() - kerf, split.width() - kerf, kerf + extra / gaps, nodes);
    }

    /** The pieces of a blank at their places in it. */
    private List<PlacedPiece> held(CutNode node, Block block, int x, int y) {
        if (node instanceof CutNode.Piece piece) {
            return List.of(piece(block, piece, x, y));
        }
        var held = new ArrayList<PlacedPiece>();
        if (node instanceof CutNode.Split split) {
            boolean rip = split.direction() == Direction.RIP;
            int at = 0;
            for (var next : split.nodes()) {
                held.addAll(held(next, block, rip ? x : x + at, rip ? y + at : y));
                at += CutNode.extent(next, split.direction());
            }
        }
        return held;
    }

    /** Two strips of their own widths from either edge of the blank. */
    private static List<PlacedPiece> strips(Block block, Area blank, boolean turned) {
        var strips = new ArrayList<PlacedPiece>();
        for (var line : block.pieces()) {
            int width = SheetUnit.up(line.part().roughWidth());
            boolean far = !strips.isEmpty();
            var area = turned
                    ? new Area(far ? blank.length() - width : 0, 0, width, blank.width())
                    : new Area(0, far ? blank.width() - width : 0, blank.length(), width);
            strips.add(new PlacedPiece(line.label(), area, turned));
        }
        return strips;
    }

    private Area real(CutNode node, int x, int y) {
        return new Area(x, y, node.length() - kerf, node.width() - kerf);
    }

    /** The same with length and width exchanged. */
    private static CutNode turned(CutNode node) {
        if (node instanceof CutNode.Piece piece) {
            return new CutNode.Piece(piece.type(), piece.width(), piece.length(), !piece.turned());
        }
        if (node instanceof CutNode.Split split) {
            var across = split.direction() == Direction.RIP ? Direction.CROSSCUT : Direction.RIP;
            var nodes = split.nodes().stream().map(Opening::turned).toList();
            return new CutNode.Split(across, split.width(), split.length(), nodes);
        }
        return new CutNode.Rest(node.width(), node.length());
    }

    /**
     * Wide strips first, equal ones together, the rest at the far end. Where the panel is shorter along the fence than
     * is safe, narrow strips first, so that they are cut off while it is still large.
     */
    private List<CutNode> inCuttingOrder(CutNode.Split split) {
        var along = split.direction() == Direction.RIP ? split.length() : split.width();
        int sense = along - kerf < smallest ? 1 : -1;
        var isRest = Comparator.comparing((CutNode node) -> node instanceof CutNode.Rest);
        var bySize = Comparator.comparingInt((CutNode node) -> sense * CutNode.extent(node, split.direction()));
        return split.nodes().stream()
                .sorted(isRest.thenComparing(bySize).thenComparingInt(Opening::firstType))
                .toList();
    }

    private static int firstType(CutNode node) {
        if (node instanceof CutNode.Split split) {
            return split.nodes().stream().mapToInt(Opening::firstType).min().orElseThrow();
        }
        return node instanceof CutNode.Piece piece ? piece.type() : Integer.MAX_VALUE;
    }
}
