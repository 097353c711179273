package org.standwright.router.plan.places;

import org.standwright.sheet.search.Dice;

/** One of several searches side by side, each with its own seed: looks for cheaper and cheaper layouts. */
final class Lane {
    private final Terms terms;
    private final long seed;
    private final int lane;
    private final int lanes;
    private final RuinAndRecreate search;
    private Layout best;

    /**
     * @param start complete, or with pieces missing when the stock is scarce
     * @param lane from 0 on
     * @param lanes how many there are
     */
    Lane(Terms terms, Layout start, long seed, int lane, int lanes) {
        this.terms = terms;
        this.seed = seed;
        this.lane = lane;
        this.lanes = lanes;
        this.search = search(seed, lane);
        adopt(start);
    }

    /** Goes on from a layout. */
    void adopt(Layout layout) {
        best = layout;
        search.begin(layout, layout.isComplete() ? layout.cost() - 1 : Long.MAX_VALUE);
    }

    /** The cheapest layout so far. Pieces are missing from it only while none without was found. */
    Layout best() {
        return best;
    }

    /** So many steps, fewer where the goal is met. */
    void run(int steps, long goal) {
        for (int i = 0; i < steps && !isDone(goal); i++) {
            if (search.step()) {
                adopt(search.found().copy());
            }
        }
    }

    private boolean isDone(long goal) {
        return best.isComplete() && best.cost() <= goal;
    }

    /** Its best layout with as large a rest as it can clear in so many steps. */
    Layout cleared(int steps) {
        return new Clearing(terms, best, search(~seed, lanes + lane)).run(steps);
    }

    /** @param owner the searches of all lanes share boards, so each needs owners of its own */
    private RuinAndRecreate search(long searchSeed, int owner) {
        return new RuinAndRecreate(terms, new Dice(searchSeed), owner, 2 * lanes);
    }
}
