package org.standwright.sheet.search;

import java.util.List;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Layout;

/**
 * An answer to a packing job.
 *
 * @param cost of its boards, as their kinds say
 */
public record Packing(List<CutTree> boards, long cost) {
    public Packing {
        boards = List.copyOf(boards);
    }

    static Packing of(PackingJob job, Layout<Board> layout) {
        return of(
                job,
                layout.boards().stream()
                        .map(board -> new CutTree(board.kind(), board.tree()))
                        .toList());
    }

    static Packing of(PackingJob job, List<CutTree> boards) {
        return new Packing(
                boards,
                boards.stream()
                        .mapToLong(board -> job.kinds().get(board.kind()).cost())
                        .sum());
    }
}
