package org.standwright.sheet.lane;

/** One of several searches side by side: looks for cheaper and cheaper layouts. */
public final class Lane<B extends BoardInWork<B>> {
    private final LateAcceptance<B> search;
    private Layout<B> best;

    /** @param start complete, or with pieces missing when the stock is scarce */
    Lane(Layout<B> start, LateAcceptance<B> search) {
        this.search = search;
        adopt(start);
    }

    /** Goes on from a layout. */
    void adopt(Layout<B> layout) {
        best = layout;
        search.begin(layout, layout.isComplete() ? layout.cost() - 1 : Long.MAX_VALUE);
    }

    /** The cheapest layout so far. Pieces are missing from it only while none without was found. */
    Layout<B> best() {
        return best;
    }

    /** Goes on from other boards of which pieces are missing, after the same goal. */
    public void restart(Layout<B> start) {
        search.begin(start, best.cost() - 1);
    }

    /** Whether it has come no nearer for long. */
    public boolean isIdle() {
        return search.isIdle();
    }

    /** So many steps, fewer where the goal is met. */
    void run(int steps, long goal) {
        for (int i = 0; i < steps && !best.isFor(goal); i++) {
            if (search.step()) {
                adopt(search.found().copy());
            }
        }
    }
}
