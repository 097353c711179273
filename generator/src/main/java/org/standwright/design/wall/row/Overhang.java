package org.standwright.design.wall.row;

import java.util.List;

/**
 * How far a strip may reach beyond its last screw. All limits are common practice without a source, except that the
 * middle of the next bay is our own: short of it a strip meets neither the next stud nor what starts there.
 */
final class Overhang {
    /** From a screw to the end of its strip, so that the wood does not split, mm. */
    static final double LEAST = 25;

    /** Of two studs closer than this only the left one takes screws: a quarter of it is the least overhang, mm. */
    static final double CLOSEST = 4 * LEAST;

    private static final double MOST = 150;

    private final List<Double> studs;

    Overhang(List<Double> studs) {
        this.studs = studs;
    }

    /** At most 150 mm, a quarter of the way back to the next screw, half of the way to the next stud. */
    double most(int at, int inward) {
        double back = distance(at, inward);
        int outward = 2 * at - inward;
        double ahead = outward < 0 || outward >= studs.size() ? Double.POSITIVE_INFINITY : distance(at, outward);
        return Math.min(MOST, Math.min(back / 4, ahead / 2));
    }

    private double distance(int a, int b) {
        return Math.abs(studs.get(a) - studs.get(b));
    }
}
