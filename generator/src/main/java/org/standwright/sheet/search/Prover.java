package org.standwright.sheet.search;

import java.util.List;
import org.standwright.sheet.bound.ColumnGeneration;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.PackingJob;

/**
 * Raises the bound beside the lanes, a slice of work in each round, until it meets the best cost. Its own rounds
 * may take more than a slice; then it waits until as much was granted.
 */
final class Prover {
    private final PackingJob job;
    private ColumnGeneration columns;
    private long bound;
    private long granted;

    /** @param bound that is known already */
    Prover(PackingJob job, long bound) {
        this.job = job;
        this.bound = bound;
    }

    /** No plan costs less. */
    long bound() {
        return bound;
    }

    /**
     * @param cost of the best layout: a bound that meets it is enough
     * @param work additions, about as many as a processor does in as many nanoseconds
     */
    void run(long cost, long work) {
        if (bound >= cost) {
            return;
        }
        if (columns == null) {
            columns = new ColumnGeneration(job, cost);
        }
        granted += work;
        if (columns.spent() < granted) {
            bound = Math.max(bound, columns.improve(granted - columns.spent(), () -> false));
        }
    }

    /** Boards that it came by; none where the saw's limits are not in them. */
    List<CutTree> boards() {
        return columns == null || !job.rules().isFree() ? List.of() : columns.patterns();
    }
}
