package org.standwright.solid;

/**
 * How closely a round hole is followed by a polygon.
 *
 * <p>A regular n-gon in a circle of radius r misses it by at most r (1 - cos(pi / n)); the number of sides follows from
 * that, in fours so that a quarter turn maps the polygon onto itself.
 */
public enum Fineness {
    /** For files: within 0.05 mm. */
    FILE(0.05),
    /** For the screen: within 0.1 mm. */
    SCREEN(0.1);

    private static final int FEWEST = 12;
    private static final int MOST = 64;

    private final double tolerance;

    Fineness(double tolerance) {
        this.tolerance = tolerance;
    }

    /** How many sides a hole of this radius (mm) gets: a multiple of 4 from 12 to 64. */
    public int sides(double radius) {
        double cosine = Math.max(-1, 1 - tolerance / radius);
        double needed = StrictMath.ceil(Math.PI / StrictMath.acos(cosine));
        int fours = (int) Math.min(MOST, 4 * Math.ceil(needed / 4));
        return Math.max(FEWEST, fours);
    }

    /** Distance from the centre to the polygon's corners at which its area is that of the circle, mm. */
    public double cornerRadius(double radius) {
        double step = 2 * Math.PI / sides(radius);
        return radius * Math.sqrt(step / StrictMath.sin(step));
    }
}
