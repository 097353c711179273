package org.standwright.sheet.lane;

import java.util.function.LongFunction;

/**
 * Looks for a layout without a missing piece whose boards cost no more than a limit: takes some pieces off, lays them
 * again, keeps the result if it is not worse than what stood some steps ago. After T. Gardeyn, T. Wauters, A goal-driven
 * ruin and recreate heuristic for the 2D variable-sized bin packing problem with guillotine constraints, EJOR 2021.
 */
public final class LateAcceptance<B extends BoardInWork<B>> {
    private final Move<B> move;
    private final int owners;
    private final Memory memory = new Memory();
    private Layout<B> current;
    private Layout<B> trial;
    private long limit;
    private long owner;

    /**
     * @param owner from 0 on, of all searches that share boards: none changes another one's
     * @param owners number of those searches
     */
    LateAcceptance(Tally tally, Move<B> move, int owner, int owners) {
        this.move = move;
        this.owner = owner;
        this.owners = owners;
        this.current = Layout.empty(tally);
        this.trial = Layout.empty(tally);
    }

    /** Starts anew from a layout, its missing pieces included. */
    void begin(Layout<B> start, long costLimit) {
        limit = costLimit;
        current.take(start, nextOwner());
        while (current.cost() > limit) {
            current.clear(current.emptiest());
        }
        memory.begin(current.missingArea(), current.restValue());
    }

    /**
     * Starts anew with another board instead of one of the layout, the pieces on that one missing at first.
     *
     * @param other board of the same kind, for its owner
     */
    public void beginInstead(Layout<B> start, int board, LongFunction<B> other) {
        limit = start.cost();
        current.take(start, nextOwner());
        current.clear(board);
        current.add(other.apply(owner));
        memory.begin(current.missingArea(), current.restValue());
    }

    /** The layout after the last step that found one without a missing piece. */
    public Layout<B> found() {
        return trial;
    }

    /** @return whether a layout without a missing piece is found */
    public boolean step() {
        trial.take(current, nextOwner());
        move.change(trial, limit);
        long missing = trial.missingArea();
        if (missing == 0) {
            return true;
        }
        if (memory.accepts(missing, trial.restValue())) {
            move.accepted(trial);
            var other = current;
            current = trial;
            trial = other;
        }
        return false;
    }

    /** Whether it has come no nearer for long. */
    boolean isIdle() {
        return memory.isIdle();
    }

    private long nextOwner() {
        owner += owners;
        return owner;
    }
}
