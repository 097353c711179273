package org.standwright.sheet.bound;

import java.util.List;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * The least cost of boards by weighing each piece with the product of one dual feasible function of its length and one
 * of its width: no board holds more than the product of what its two sides hold. A piece that may be turned weighs the
 * less of both ways. On square boards it may as well weigh their mean, since a plan and its mirror image hold it both
 * ways (F. Clautiaux, A. Jouglet, J. El Hayek, A new lower bound for the non-oriented two-dimensional bin-packing
 * problem, 2007).
 */
final class DualFeasibleBound {
    /** Multiplications that weighing all pieces in all ways may take. */
    private static final double WORK = 2e6;

    /** Of the functions, three go with each threshold. */
    private static final int MOST_THRESHOLDS = 64;

    private static final int FEWEST_THRESHOLDS = 12;

    private final List<PieceType> types;
    private final StockCost stock;
    private final boolean[] straight;
    private final boolean[] turned;
    private final double[] counts;
    private final List<SideWeights> alongLength;
    private final List<SideWeights> alongWidth;
    private final boolean square;
    private double most;
    private long least;

    private DualFeasibleBound(PackingJob job) {
        types = job.types();
        stock = new StockCost(job.kinds());
        square = job.kinds().stream().allMatch(kind -> kind.length() == kind.width());
        straight = fitting(job, false);
        turned = fitting(job, true);
        counts = types.stream().mapToDouble(PieceType::count).toArray();
        int thresholds =
                Math.min(MOST_THRESHOLDS, Math.max(FEWEST_THRESHOLDS, (int) (Math.sqrt(WORK / types.size()) / 3)));
        alongLength = SideWeights.of(
                Sizes.alongLength(types, straight, turned),
                job.kinds().stream().mapToInt(BoardKind::length).toArray(),
                thresholds);
        alongWidth = SideWeights.of(
                Sizes.alongWidth(types, straight, turned),
                job.kinds().stream().mapToInt(BoardKind::width).toArray(),
                thresholds);
    }

    static long of(PackingJob job) {
        return new DualFeasibleBound(job).bound();
    }

    /** By type, whether any kind of board takes it this way. */
    private static boolean[] fitting(PackingJob job, boolean turned) {
        boolean[] fitting = new boolean[job.types().size()];
        for (int i = 0; i < fitting.length; i++) {
            var type = job.types().get(i);
            fitting[i] = job.kinds().stream().anyMatch(kind -> type.fits(kind, turned));
        }
        return fitting;
    }

    private long bound() {
        double[] capacity = new double[alongLength.get(0).boards().length];
        for (var along : alongLength) {
            for (var across : alongWidth) {
                for (int kind = 0; kind < capacity.length; kind++) {
                    capacity[kind] = along.boards()[kind] * across.boards()[kind];
                }
                consider(total(along, across), capacity);
                if (square) {
                    considerMean(along, across, capacity);
                }
            }
        }
        return least;
    }

    private void considerMean(SideWeights along, SideWeights across, double[] capacity) {
        double total = 0;
        for (int i = 0; i < counts.length; i++) {
            double lying = along.straight()[i] * across.straight()[i];
            double other = along.turned()[i] * across.turned()[i];
            total += (lying + other) / 2 * counts[i];
        }
        consider(total, capacity);
    }

    private void consider(double total, double[] capacity) {
        double cost = stock.inParts(total, capacity);
        if (cost > most) {
            most = cost;
            least = Math.max(least, stock.least(total, capacity));
        }
    }

    private double total(SideWeights along, SideWeights across) {
        double total = 0;
        for (int i = 0; i < counts.length; i++) {
            double lying = along.straight()[i] * across.straight()[i];
            double other = along.turned()[i] * across.turned()[i];
            double weight = !turned[i] ? lying : !straight[i] ? other : Math.min(lying, other);
            total += weight * counts[i];
        }
        return total;
    }
}
