package org.standwright.solid;

/**
 * How closely a round hole is followed by a polygon.
 *
 * <p>A regular n-gon in a circle of radius r misses it by at most r (1 - cos(pi / n)); the number of sides follows from
 * that, in fours so that a quarter turn maps the polygon onto itself. The corners then move out until the areas are
 * equal, which leaves two thirds of the error outside and one third inside.
 */
public enum Fineness {
    /** For files: within 0.05 mm. */
    FILE(0.05),
    /** For the screen: within 0.1 mm. */
    SCREEN(0.1);

    private static final int FEWEST = 12;
    private final double tolerance;

    Fineness(double tolerance) {
        this.tolerance = tolerance;
    }

    /** How many sides a hole of this radius (mm) gets: a multiple of 4, at least 12. */
    public int sides(double radius) {
        double cosine = Math.max(-1, 1 - tolerance / radius);
        double needed = StrictMath.ceil(Math.PI / StrictMath.acos(cosine));
        return Math.max(FEWEST, 4 * (int) Math.ceil(needed / 4));
    }

    /**
     * How many chords an arc of this radius (mm) and angle (radians) gets: its share of a circle's, 2 at least, and as
     * many as keep the corners between its ends within the tolerance; they stand out more than a circle's.
     */
    int chords(double radius, double angle) {
        int chords = (int) Math.max(2, Math.ceil(sides(radius) * angle / (2 * Math.PI) - 1e-9));
        while (arcRadius(radius, angle, chords) - radius > tolerance) {
            chords++;
        }
        return chords;
    }

    /** Distance from the centre to the polygon's corners at which its area is that of the circle, mm. */
    double cornerRadius(double radius) {
        return cornerRadius(radius, sides(radius));
    }

    /** Distance from the centre to the corners of a polygon of this many sides that has the area of the circle, mm. */
    static double cornerRadius(double radius, int sides) {
        double step = 2 * Math.PI / sides;
        return radius * Math.sqrt(step / StrictMath.sin(step));
    }

    /**
     * Distance from an arc's centre to the corners between its ends at which the chords enclose the arc's area, mm.
     *
     * <p>With n chords of angle d the area is sin(d) (2 r R + (n - 2) R²) / 2, which has to be n d r² / 2.
     */
    static double arcRadius(double radius, double angle, int chords) {
        double each = angle / chords;
        double share = angle / StrictMath.sin(each);
        int between = chords - 2;
        return between == 0 ? radius * share / 2 : radius * (Math.sqrt(1 + between * share) - 1) / between;
    }
}
