package org.standwright.sheet;

/**
 * How near a plan is to the least that any plan needs.
 *
 * @param goal what is counted
 * @param reached by the plan
 * @param least no plan can do with less
 */
public record Proof(Goal goal, long reached, long least) {
    /** What a plan is to use as little of as it can. */
    public enum Goal {
        /** Bought sheets, all of one size or of equal worth. */
        SHEETS,
        /** Money for bought sheets, in thousandths of their currency's unit. */
        MONEY,
        /** Area of bought sheets where their prices are not all known, mm². */
        AREA
    }

    public Proof {
        if (least > reached) {
            throw new IllegalArgumentException("a plan reached " + reached + ", below its lower bound " + least + ".");
        }
    }

    public boolean isMinimal() {
        return reached == least;
    }

    public long gap() {
        return reached - least;
    }
}
