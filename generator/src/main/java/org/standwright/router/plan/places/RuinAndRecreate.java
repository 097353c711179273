package org.standwright.router.plan.places;

import java.util.Arrays;
import org.standwright.sheet.search.Dice;

/**
 * Looks for a layout without a missing piece whose boards cost no more than a limit: take some pieces off, lay them
 * again where few places remain for them, keep the result if it is not worse than what stood some steps ago. After
 * T. Gardeyn, T. Wauters, EJOR 2021, as the search for saws does; here the places are rectangles that overlap.
 */
final class RuinAndRecreate {
    private static final int MEAN_REMOVALS = 4;
    /** One removal in so many takes all off that lies between two pieces. */
    private static final int WINDOW_ONE_IN = 3;
    /** How many steps back a layout is compared to, at first. */
    private static final int SHORT_MEMORY = 50;
    /** Steps without progress, in memories, after which the memory grows. */
    private static final int PATIENCE = 400;

    private static final int LONG_MEMORY = 2000;

    private final Dice dice;
    private final Recreation recreation;
    private final int owners;
    private Layout current;
    private Layout trial;
    private long limit;
    private long owner;

    private long[] missing = new long[SHORT_MEMORY];
    private double[] values = new double[SHORT_MEMORY];
    private int slot;
    private long currentMissing;
    private double currentValue;
    private long leastMissing;
    private int idle;

    /**
     * @param owner from 0 on, of all searches that share boards: none changes another one's
     * @param owners number of those searches
     */
    RuinAndRecreate(Terms terms, Dice dice, int owner, int owners) {
        this.dice = dice;
        this.owner = owner;
        this.owners = owners;
        this.recreation = new Recreation(terms, dice);
        this.current = Layout.empty(terms);
        this.trial = Layout.empty(terms);
    }

    /** Starts anew from a layout, its missing pieces included. */
    void begin(Layout start, long costLimit) {
        limit = costLimit;
        current.take(start, nextOwner());
        while (current.cost() > limit) {
            current.clear(current.emptiest());
        }
        remember(SHORT_MEMORY);
    }

    /** Starts anew with only so much of one board to use, the pieces on that board missing at first. */
    void beginNarrow(Layout start, int board, int length, int width) {
        limit = start.cost();
        current.take(start, nextOwner());
        current.narrow(board, length, width);
        remember(SHORT_MEMORY);
    }

    private void remember(int steps) {
        if (steps != missing.length) {
            missing = new long[steps];
            values = new double[steps];
        }
        currentMissing = current.missingArea();
        currentValue = current.restValue();
        Arrays.fill(missing, currentMissing);
        Arrays.fill(values, currentValue);
        leastMissing = currentMissing;
        slot = 0;
        idle = 0;
    }

    /** The layout after the last step that found one without a missing piece. */
    Layout found() {
        return trial;
    }

    /** @return whether a layout without a missing piece is found */
    boolean step() {
        trial.take(current, nextOwner());
        ruin();
        recreation.fill(trial, limit);
        long trialMissing = trial.missingArea();
        if (trialMissing == 0) {
            return true;
        }
        double trialValue = trial.restValue();
        if (!better(missing[slot], values[slot], trialMissing, trialValue)
                || !better(currentMissing, currentValue, trialMissing, trialValue)) {
            accept(trialMissing, trialValue);
        }
        missing[slot] = currentMissing;
        values[slot] = currentValue;
        slot = slot + 1 == missing.length ? 0 : slot + 1;
        if (++idle > PATIENCE * missing.length && missing.length < LONG_MEMORY) {
            remember(2 * missing.length);
        }
        return false;
    }

    private void accept(long trialMissing, double trialValue) {
        var other = current;
        current = trial;
        trial = other;
        currentMissing = trialMissing;
        currentValue = trialValue;
        if (currentMissing < leastMissing) {
            leastMissing = currentMissing;
            idle = 0;
        }
    }

    private static boolean better(long missingA, double valueA, long missingB, double valueB) {
        return missingA != missingB ? missingA < missingB : valueA > valueB;
    }

    private void ruin() {
        int removals = 1 + dice.below(2 * MEAN_REMOVALS - 1);
        for (int i = 0; i < removals && trial.count() > 0; i++) {
            int index = dice.below(trial.count());
            int pieces = trial.board(index).pieces();
            if (pieces == 0) {
                continue;
            }
            if (dice.oneIn(WINDOW_ONE_IN)) {
                trial.removeAround(index, dice.below(pieces), dice.below(pieces));
            } else {
                trial.remove(index, dice.below(pieces));
            }
        }
        trial.refresh();
    }

    private long nextOwner() {
        owner += owners;
        return owner;
    }
}
