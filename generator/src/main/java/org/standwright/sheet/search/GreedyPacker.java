package org.standwright.sheet.search;

import static java.util.Comparator.comparingInt;
import static java.util.Comparator.comparingLong;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/** The first answer: largest pieces first, each where it costs least, by several notions of large; the best counts. */
final class GreedyPacker {
    private static final List<Comparator<PieceType>> SMALL_FIRST = List.of(
            comparingLong(PieceType::area),
            comparingInt((PieceType type) -> Math.max(type.length(), type.width())),
            comparingInt((PieceType type) -> Math.min(type.length(), type.width())),
            comparingInt(type -> type.length() + type.width()),
            comparingInt(PieceType::length),
            comparingInt(PieceType::width));

    private final PackingJob job;
    private final InsertionSearch insertions;

    private GreedyPacker(PackingJob job) {
        this.job = job;
        this.insertions = new InsertionSearch(job, () -> false);
    }

    static Layout pack(PackingJob job) {
        var packer = new GreedyPacker(job);
        return SMALL_FIRST.stream()
                .map(order ->
                        packer.inOrder(order.thenComparing(PieceType::area).reversed()))
                .reduce((best, next) -> next.betterThan(best) ? next : best)
                .orElseThrow();
    }

    private Layout inOrder(Comparator<PieceType> order) {
        var layout = Layout.empty(job);
        IntStream.range(0, job.types().size())
                .boxed()
                .sorted((a, b) -> order.compare(job.types().get(a), job.types().get(b)))
                .forEach(type -> place(layout, type));
        return layout;
    }

    private void place(Layout layout, int type) {
        while (layout.missing(type) > 0) {
            insertions.cheapest(layout, type).ifPresentOrElse(layout::insert, () -> layout.begin(Board.whole(job)));
        }
    }
}
