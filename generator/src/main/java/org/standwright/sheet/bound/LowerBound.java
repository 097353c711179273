package org.standwright.sheet.bound;

import static java.util.Comparator.comparingLong;

import java.util.ArrayList;
import java.util.List;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/** A number of boards that no plan can do without, by three arguments that hold for any way of cutting. */
public final class LowerBound {
    private LowerBound() {}

    public static int of(PackingJob job) {
        return Math.max(byArea(job), Math.max(byLargePieces(job), DualFeasibleBound.of(job)));
    }

    static int byArea(PackingJob job) {
        long pieces = job.types().stream()
                .mapToLong(type -> type.area() * type.count())
                .sum();
        return Math.toIntExact(
                (pieces + job.kinds().get(0).area() - 1) / job.kinds().get(0).area());
    }

    /** Pieces of which no two can share a board, gathered from the largest on. */
    static int byLargePieces(PackingJob job) {
        var apart = new ArrayList<PieceType>();
        int pieces = 0;
        for (var type : largestFirst(job)) {
            if (apart.stream().noneMatch(other -> share(job, type, other))) {
                apart.add(type);
                pieces += share(job, type, type) ? 1 : type.count();
            }
        }
        return pieces;
    }

    private static List<PieceType> largestFirst(PackingJob job) {
        return job.types().stream()
                .sorted(comparingLong(PieceType::area).reversed())
                .toList();
    }

    private static boolean share(PackingJob job, PieceType a, PieceType b) {
        for (boolean turnA : new boolean[] {false, true}) {
            for (boolean turnB : new boolean[] {false, true}) {
                boolean allowed =
                        a.fits(job.kinds().get(0), turnA) && b.fits(job.kinds().get(0), turnB);
                boolean endToEnd =
                        a.along(turnA) + b.along(turnB) <= job.kinds().get(0).length();
                boolean sideBySide =
                        a.across(turnA) + b.across(turnB) <= job.kinds().get(0).width();
                if (allowed && (endToEnd || sideBySide)) {
                    return true;
                }
            }
        }
        return false;
    }
}
