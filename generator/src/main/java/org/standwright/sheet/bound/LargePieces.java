package org.standwright.sheet.bound;

import static java.util.Comparator.comparingInt;
import static java.util.Comparator.comparingLong;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * The least cost of boards by pieces of which no two can share a board, gathered from the largest on: each takes a
 * board of its own, the cheapest that are there.
 */
final class LargePieces {
    private final PackingJob job;
    private final List<PieceType> apart = new ArrayList<>();
    /** Pieces of each of these types that count. */
    private final List<Integer> counts = new ArrayList<>();

    private LargePieces(PackingJob job) {
        this.job = job;
        job.types().stream()
                .sorted(comparingLong(PieceType::area).reversed())
                .filter(type -> apart.stream().noneMatch(other -> share(type, other)))
                .forEach(type -> {
                    apart.add(type);
                    counts.add(share(type, type) ? 1 : type.count());
                });
    }

    static long of(PackingJob job) {
        return new LargePieces(job).cost();
    }

    private long cost() {
        int pieces = counts.stream().mapToInt(count -> count).sum();
        long cost = 0;
        var cheapestFirst = IntStream.range(0, job.kinds().size())
                .boxed()
                .sorted(comparingLong((Integer kind) -> job.kinds().get(kind).cost())
                        .thenComparing(comparingInt(kind -> kind)))
                .toList();
        for (int at : cheapestFirst) {
            var kind = job.kinds().get(at);
            int boards = Math.min(pieces, Math.min(kind.count(), fitting(kind)));
            cost += boards * kind.cost();
            pieces -= boards;
        }
        return cost;
    }

    private int fitting(BoardKind kind) {
        return IntStream.range(0, apart.size())
                .filter(i -> apart.get(i).fits(kind))
                .map(counts::get)
                .sum();
    }

    private boolean share(PieceType a, PieceType b) {
        return job.kinds().stream().anyMatch(kind -> share(kind, a, b));
    }

    private static boolean share(BoardKind kind, PieceType a, PieceType b) {
        for (boolean turnA : new boolean[] {false, true}) {
            for (boolean turnB : new boolean[] {false, true}) {
                boolean endToEnd = a.along(turnA) + b.along(turnB) <= kind.length();
                boolean sideBySide = a.across(turnA) + b.across(turnB) <= kind.width();
                if (a.fits(kind, turnA) && b.fits(kind, turnB) && (endToEnd || sideBySide)) {
                    return true;
                }
            }
        }
        return false;
    }
}
