package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.List;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/** Boards in work and the pieces that are not on one yet. Boards are shared between copies, never changed. */
final class Layout {
    private final PackingJob job;
    private final List<Board> boards;
    private final int[] missing;

    private Layout(PackingJob job, List<Board> boards, int[] missing) {
        this.job = job;
        this.boards = boards;
        this.missing = missing;
    }

    /** No board begun, every piece missing. */
    static Layout empty(PackingJob job) {
        var missing = job.types().stream().mapToInt(PieceType::count).toArray();
        return new Layout(job, new ArrayList<>(), missing);
    }

    Layout copy() {
        return new Layout(job, new ArrayList<>(boards), missing.clone());
    }

    List<Board> boards() {
        return boards;
    }

    int missing(int type) {
        return missing[type];
    }

    boolean complete() {
        return missingArea() == 0;
    }

    long missingArea() {
        long area = 0;
        for (int type = 0; type < missing.length; type++) {
            area += missing[type] * job.types().get(type).area();
        }
        return area;
    }

    double restValue() {
        return boards.stream().mapToDouble(Board::restValue).sum();
    }

    /** Area of the largest single offcut as it lies in the workshop, units². */
    long largestOffcut() {
        int kerf = job.rules().kerf();
        return boards.stream()
                .flatMap(board -> board.rests().stream())
                .mapToLong(rest -> (long) (rest.length() - kerf) * (rest.width() - kerf))
                .max()
                .orElse(0);
    }

    void begin(Board board) {
        boards.add(board);
    }

    /** Boards that were begun for nothing, every way onto them overlooked, go back to the stack. */
    void returnWholeBoards() {
        boards.removeIf(Board::isWhole);
    }

    void insert(Insertion insertion) {
        var result = insertion.result(job.types().get(insertion.type()));
        var tree = boards.get(insertion.board()).tree().replace(insertion.rest(), result);
        boards.set(insertion.board(), new Board(tree));
        missing[insertion.type()]--;
    }

    /** Takes a piece or a whole split off its board; a board that is whole again goes back to the stack. */
    void remove(int board, CutNode node) {
        release(node);
        var tree = boards.get(board).tree().replace(node, new CutNode.Rest(node.length(), node.width()));
        var changed = new Board(tree);
        if (changed.isWhole()) {
            boards.remove(board);
        } else {
            boards.set(board, changed);
        }
    }

    /** Gives up the board with the least on it. */
    void dropEmptiest() {
        int emptiest = 0;
        for (int i = 1; i < boards.size(); i++) {
            if (restArea(i) > restArea(emptiest)) {
                emptiest = i;
            }
        }
        release(boards.get(emptiest).tree());
        boards.remove(emptiest);
    }

    private long restArea(int board) {
        return boards.get(board).rests().stream().mapToLong(CutNode.Rest::area).sum();
    }

    private void release(CutNode node) {
        if (node instanceof CutNode.Piece piece) {
            missing[piece.type()]++;
        } else if (node instanceof CutNode.Split split) {
            split.nodes().forEach(this::release);
        }
    }

    /** Fewer boards are better, then the larger single offcut, then more value in the rests. */
    boolean betterThan(Layout other) {
        if (boards.size() != other.boards.size()) {
            return boards.size() < other.boards.size();
        }
        long largest = largestOffcut();
        long othersLargest = other.largestOffcut();
        return largest != othersLargest ? largest > othersLargest : restValue() > other.restValue();
    }
}
