package org.standwright.check.wall.statics;

/**
 * What one screw gets.
 *
 * @param out along the screw, drawing it out, N
 * @param sideways across the screw, N
 */
public record ScrewLoad(double out, double sideways) {
    public ScrewLoad {
        Given.notNegative("pull on a screw", out, "N");
        Given.notNegative("load across a screw", sideways, "N");
    }

    /** Both on one screw. */
    public ScrewLoad plus(ScrewLoad other) {
        return new ScrewLoad(out + other.out, sideways + other.sideways);
    }

    public ScrewLoad times(double factor) {
        return new ScrewLoad(factor * out, factor * sideways);
    }
}
