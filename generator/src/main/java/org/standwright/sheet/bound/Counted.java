package org.standwright.sheet.bound;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The dual feasible function that knows the job: counts the pieces from k to half the side, of which only so many can
 * lie in a row, and weighs a larger one by how many of them it displaces.
 */
final class Counted implements DualFeasible {
    private final long side;
    private final long k;
    /** How far the smallest 1, 2, … pieces of the range reach, equal pieces together. */
    private final long[] reach;

    /** How many pieces that is. */
    private final long[] pieces;

    /** Size of the last of them. */
    private final long[] last;

    private final double inAll;

    private Counted(long side, long k, long[] reach, long[] pieces, long[] last) {
        this.side = side;
        this.k = k;
        this.reach = reach;
        this.pieces = pieces;
        this.last = last;
        inAll = mostIn(side);
    }

    /** Empty if no piece is in the range; a piece counts with the smaller of its sizes. */
    static Optional<DualFeasible> of(long side, Sizes sizes, long k) {
        var inRange = IntStream.range(0, sizes.counts().length)
                .mapToObj(type -> new long[] {sizes.smallest(type, k, side / 2), sizes.counts()[type]})
                .filter(sizeAndCount -> sizeAndCount[0] > 0)
                .sorted((a, b) -> Long.compare(a[0], b[0]))
                .toArray(long[][]::new);
        if (inRange.length == 0) {
            return Optional.empty();
        }
        long[] last = Arrays.stream(inRange).mapToLong(each -> each[0]).toArray();
        long[] pieces = Arrays.stream(inRange).mapToLong(each -> each[1]).toArray();
        long[] reach = new long[last.length];
        for (int i = 0; i < last.length; i++) {
            reach[i] = pieces[i] * last[i] + (i == 0 ? 0 : reach[i - 1]);
            pieces[i] += i == 0 ? 0 : pieces[i - 1];
        }
        return Optional.of(new Counted(side, k, reach, pieces, last));
    }

    @Override
    public double of(long size) {
        return 2 * size > side ? 1 - mostIn(side - size) / inAll : size >= k ? 1 / inAll : 0;
    }

    @Override
    public double ofBoard(long length) {
        return 1;
    }

    /** Most pieces of the range in a row this long. */
    private long mostIn(long length) {
        int at = Arrays.binarySearch(reach, length);
        if (at >= 0) {
            return pieces[at];
        }
        int next = -at - 1;
        long before = next == 0 ? 0 : pieces[next - 1];
        long left = next == 0 ? length : length - reach[next - 1];
        return next == reach.length ? before : before + left / last[next];
    }
}
