package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutNode;

/**
 * A small block for pieces of any sizes: shelves of falling width one above the other, tried with every length that the
 * first pieces of a shelf come to; the smallest that a saw parts and that fits a board is taken, else the smallest of
 * all. Each is tried with room around every piece, too, for break-down cuts.
 */
final class OneSheet {
    private final List<CutNode> pieces;
    private final List<BoardKind> boards;
    private final BlockCuts cuts;

    /** @param pieces as they lie on the sheet, sizes enlarged by the kerf */
    OneSheet(List<CutNode> pieces, List<BoardKind> boards, BlockCuts cuts) {
        this.pieces = pieces.stream()
                .sorted(Comparator.comparingInt(CutNode::width)
                        .reversed()
                        .thenComparing(Comparator.comparingInt(CutNode::length).reversed()))
                .toList();
        this.boards = boards;
        this.cuts = cuts;
    }

    CutNode smallest() {
        var blocks = new ArrayList<CutNode>();
        long longest = pieces.stream().mapToLong(CutNode::length).max().orElseThrow();
        long run = 0;
        for (var piece : pieces) {
            run += piece.length();
            inShelves(Math.max(longest, run), 0).ifPresent(blocks::add);
            inShelves(Math.max(longest, run), cuts.ample()).ifPresent(blocks::add);
        }
        return blocks.stream()
                .min(Comparator.comparing((CutNode block) -> !cuts.canPart(block))
                        .thenComparing(block -> !fits(block))
                        .thenComparingLong(OneSheet::area))
                .orElseThrow(() -> new ImpossiblePlanException(
                        "/cutting/together",
                        "a block of " + pieces.size() + " pieces is longer than any board.",
                        List.of("Keep fewer together.")));
    }

    /**
     * Empty when an integer cannot hold its sides, or a cut has too little room.
     *
     * @param over more than the pieces need, at the end of each shelf and above each piece
     */
    private Optional<CutNode> inShelves(long most, int over) {
        var shelves = new ArrayList<List<CutNode>>();
        long used = Long.MAX_VALUE;
        for (var piece : pieces) {
            if (used > most - piece.length()) {
                shelves.add(new ArrayList<>());
                used = 0;
            }
            shelves.get(shelves.size() - 1).add(piece);
            used += piece.length();
        }
        long length = over
                + shelves.stream().mapToLong(shelf -> length(shelf, over)).max().orElseThrow();
        if (length > Integer.MAX_VALUE) {
            return Optional.empty();
        }
        long width = (shelves.size() - 1L) * cuts.extra(Direction.RIP, (int) length)
                + shelves.stream()
                        .mapToLong(shelf -> (long) width(shelf) + over)
                        .sum();
        if (width > Integer.MAX_VALUE) {
            return Optional.empty();
        }
        var nodes = shelves.stream()
                .flatMap(shelf -> shelf(shelf, (int) length, over).stream())
                .toList();
        return nodes.size() < shelves.size()
                ? Optional.empty()
                : Optional.of(CutNode.split(Direction.RIP, (int) length, (int) width, nodes));
    }

    /** As wide as its first piece; narrower ones are ripped off what lies above them. */
    private Optional<CutNode> shelf(List<CutNode> row, int length, int over) {
        int width = width(row) + over;
        var nodes = row.stream().flatMap(piece -> trimmed(piece, width)).toList();
        int rest = cuts.left(Direction.CROSSCUT, width, length - (int) length(row, over));
        if (nodes.size() < row.size() || rest < 0) {
            return Optional.empty();
        }
        var all = new ArrayList<>(nodes);
        if (rest > 0) {
            all.add(new CutNode.Rest(rest, width));
        }
        return Optional.of(CutNode.split(Direction.CROSSCUT, length, width, all));
    }

    /** None where a rip has too little room. */
    private Stream<CutNode> trimmed(CutNode piece, int width) {
        int rest = cuts.left(Direction.RIP, piece.length(), width - piece.width());
        if (rest == 0) {
            return Stream.of(piece);
        }
        return rest < 0
                ? Stream.empty()
                : Stream.of(CutNode.split(
                        Direction.RIP, piece.length(), width, List.of(piece, new CutNode.Rest(piece.length(), rest))));
    }

    /** Of the pieces in a row, and what the cuts between them take. */
    private long length(List<CutNode> row, int over) {
        return (row.size() - 1L) * cuts.extra(Direction.CROSSCUT, width(row) + over)
                + row.stream().mapToLong(CutNode::length).sum();
    }

    private static int width(List<CutNode> row) {
        return row.get(0).width();
    }

    private boolean fits(CutNode block) {
        return boards.stream().anyMatch(board -> block.length() <= board.length() && block.width() <= board.width());
    }

    private static long area(CutNode block) {
        return (long) block.length() * block.width();
    }
}
