package org.standwright.sheet.search;

/** One of several searches side by side, each with its own seed: looks for cheaper and cheaper layouts. */
final class Lane {
    private final Terms terms;
    private final long seed;
    private final int lane;
    private final int lanes;
    private final RuinAndRecreate search;
    private final Patterns patterns;
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
        this.patterns = new Patterns(terms);
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

    /** Goes on from other boards of which pieces are missing, after the same goal. */
    void restart(Layout start) {
        search.begin(start, best.cost() - 1);
    }

    boolean isIdle() {
        return search.isIdle();
    }

    Patterns patterns() {
        return patterns;
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

    /** Its best layout with as large an offcut as it can clear in so many steps. */
    Layout cleared(int steps) {
        return best.isComplete() ? new OffcutSearch(terms, best, search(~seed, lanes + lane)).run(steps) : best;
    }

    /** @param owner the searches of all lanes share boards, so each needs owners of its own */
    private RuinAndRecreate search(long searchSeed, int owner) {
        return new RuinAndRecreate(terms, new Dice(searchSeed), owner, 2 * lanes, patterns);
    }
}
