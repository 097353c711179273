package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutNode;

/**
 * A small block for pieces of any sizes: shelves of falling width one above the other, tried with every length that the
 * first pieces of a shelf come to; the smallest that fits a board is taken, else the smallest of all.
 */
final class OneSheet {
    private final List<CutNode> pieces;
    private final List<BoardKind> boards;

    /** @param pieces as they lie on the sheet, sizes enlarged by the kerf */
    OneSheet(List<CutNode> pieces, List<BoardKind> boards) {
        this.pieces = pieces.stream()
                .sorted(Comparator.comparingInt(CutNode::width)
                        .reversed()
                        .thenComparing(Comparator.comparingInt(CutNode::length).reversed()))
                .toList();
        this.boards = boards;
    }

    CutNode smallest() {
        var blocks = new ArrayList<CutNode>();
        long longest = pieces.stream().mapToLong(CutNode::length).max().orElseThrow();
        long run = 0;
        for (var piece : pieces) {
            run += piece.length();
            inShelves(Math.max(longest, run)).ifPresent(blocks::add);
        }
        var smallest = Comparator.comparing((CutNode block) -> !fits(block)).thenComparingLong(OneSheet::area);
        return blocks.stream()
                .min(smallest)
                .orElseThrow(() -> new ImpossiblePlanException(
                        "/cutting/together",
                        "a block of " + pieces.size() + " pieces is longer than any board.",
                        List.of("Keep fewer together.")));
    }

    /** Empty when an integer cannot hold its sides. */
    private Optional<CutNode> inShelves(long most) {
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
        long length = shelves.stream().mapToLong(OneSheet::length).max().orElseThrow();
        long width = shelves.stream().mapToLong(shelf -> shelf.get(0).width()).sum();
        if (Math.max(length, width) > Integer.MAX_VALUE) {
            return Optional.empty();
        }
        var nodes = shelves.stream().map(shelf -> shelf(shelf, (int) length)).toList();
        return Optional.of(CutNode.split(Direction.RIP, (int) length, (int) width, nodes));
    }

    /** As wide as its first piece; narrower ones are ripped off what lies above them. */
    private static CutNode shelf(List<CutNode> row, int length) {
        int width = row.get(0).width();
        var nodes = new ArrayList<CutNode>();
        for (var piece : row) {
            nodes.add(trimmed(piece, width));
        }
        int rest = length - (int) length(row);
        if (rest > 0) {
            nodes.add(new CutNode.Rest(rest, width));
        }
        return CutNode.split(Direction.CROSSCUT, length, width, nodes);
    }

    private static CutNode trimmed(CutNode piece, int width) {
        int rest = width - piece.width();
        return rest == 0
                ? piece
                : CutNode.split(
                        Direction.RIP, piece.length(), width, List.of(piece, new CutNode.Rest(piece.length(), rest)));
    }

    private static long length(List<CutNode> row) {
        return row.stream().mapToLong(CutNode::length).sum();
    }

    private boolean fits(CutNode block) {
        return boards.stream().anyMatch(board -> block.length() <= board.length() && block.width() <= board.width());
    }

    private static long area(CutNode block) {
        return (long) block.length() * block.width();
    }
}
