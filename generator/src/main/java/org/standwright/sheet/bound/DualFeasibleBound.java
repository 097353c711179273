package org.standwright.sheet.bound;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * Boards needed at least, by weighing each piece with the product of one dual feasible function of its length and one
 * of its width: no board holds more than a weight of 1. A piece that may be turned weighs the less of both ways. On a
 * square board it may as well weigh their mean, since a plan and its mirror image hold it both ways (F. Clautiaux, A.
 * Jouglet, J. El Hayek, A new lower bound for the non-oriented two-dimensional bin-packing problem, 2007).
 */
final class DualFeasibleBound {
    /** What sums of doubles may be too large by. */
    private static final double ROUNDING = 1e-9;

    private final PackingJob job;

    private DualFeasibleBound(PackingJob job) {
        this.job = job;
    }

    static int of(PackingJob job) {
        return new DualFeasibleBound(job).bound();
    }

    private int bound() {
        var alongLength = weights(job.kinds().get(0).length());
        var alongWidth = weights(job.kinds().get(0).width());
        double most = 0;
        for (var along : alongLength) {
            for (var across : alongWidth) {
                most = Math.max(most, total(along, across));
                if (job.kinds().get(0).length() == job.kinds().get(0).width()) {
                    most = Math.max(most, squareTotal(along, across));
                }
            }
        }
        return (int) Math.ceil(most - ROUNDING);
    }

    private List<Weights> weights(int side) {
        int[] lengths = job.types().stream().mapToInt(PieceType::length).toArray();
        int[] widths = job.types().stream().mapToInt(PieceType::width).toArray();
        int[] sizes = IntStream.concat(IntStream.of(lengths), IntStream.of(widths))
                .filter(size -> size <= side)
                .toArray();
        return DualFeasible.family(side, sizes).stream()
                .map(function -> new Weights(values(function, lengths, side), values(function, widths, side)))
                .toList();
    }

    private static double[] values(DualFeasible function, int[] sizes, int side) {
        return IntStream.of(sizes)
                .mapToDouble(size -> size <= side ? function.of(size) : 1)
                .toArray();
    }

    private double total(Weights along, Weights across) {
        double total = 0;
        for (int i = 0; i < job.types().size(); i++) {
            var type = job.types().get(i);
            double straight = along.ofLength[i] * across.ofWidth[i];
            double turned = along.ofWidth[i] * across.ofLength[i];
            double weight = !type.fits(job.kinds().get(0), true)
                    ? straight
                    : !type.fits(job.kinds().get(0), false) ? turned : Math.min(straight, turned);
            total += weight * type.count();
        }
        return total;
    }

    private double squareTotal(Weights along, Weights across) {
        double total = 0;
        for (int i = 0; i < job.types().size(); i++) {
            double both = along.ofLength[i] * across.ofWidth[i] + along.ofWidth[i] * across.ofLength[i];
            total += both / 2 * job.types().get(i).count();
        }
        return total;
    }

    /** One function's value of each type's length and width. */
    private record Weights(double[] ofLength, double[] ofWidth) {}
}
