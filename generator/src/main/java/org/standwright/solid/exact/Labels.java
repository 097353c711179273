package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/**
 * Which surface each triangle of a mesh stands for. Corners lie within rounding of a plane, within the fineness of
 * files of a round surface; a triangle too narrow to tell which way it looks goes with a neighbour.
 */
final class Labels {
    /** Stands for none but itself. */
    static final int LOOSE = -1;

    private static final double GRID = 1.0 / Solid.PER_MM;
    /** A point rounded twice, mm. */
    private static final double ROUNDED = 2 * GRID;
    /** How far a polygon's corners may lie off the circle, mm. */
    private static final double OFF_ROUND = 0.05 + ROUNDED;
    /** Most between a chord and the arc at its ends, and a little, radians. */
    private static final double OFF_CHORD = 0.35;
    /** Triangles whose normal is known no better than this are narrow, radians. */
    private static final double VAGUE = 0.25;

    private final Solid solid;
    private final List<Candidate> candidates;
    private final int[] labels;
    private final List<Integer> narrow = new ArrayList<>();

    private Labels(Solid solid, List<Candidate> candidates) {
        this.solid = solid;
        this.candidates = candidates;
        this.labels = new int[solid.triangleCount()];
        Arrays.fill(labels, LOOSE);
    }

    /** Of each triangle the number of its surface, or {@link #LOOSE}. */
    static int[] of(Solid solid, Sides sides, List<Candidate> candidates) {
        var labels = new Labels(solid, candidates);
        for (int t = 0; t < labels.labels.length; t++) {
            labels.label(t);
        }
        labels.settle(sides);
        return labels.labels;
    }

    private void label(int t) {
        var corners = corners(t);
        var normal = corners[1].minus(corners[0]).cross(corners[2].minus(corners[0]));
        double vague = 1.5 * ROUNDED * longest(corners) / normal.length();
        if (vague > VAGUE) {
            narrow.add(t);
            return;
        }
        double best = Double.POSITIVE_INFINITY;
        for (var candidate : candidates) {
            double off = off(candidate, corners, normal.unit(), vague);
            if (off < best) {
                best = off;
                labels[t] = candidate.number();
            }
        }
    }

    /** How badly a triangle stands for a surface: planes before all others; infinitely if it doesn't. */
    private static double off(Candidate candidate, Vec3[] corners, Vec3 normal, double vague) {
        if (!isNear(candidate, corners)) {
            return Double.POSITIVE_INFINITY;
        }
        if (candidate.surface() instanceof Plane plane) {
            double turned = plane.normal().minus(normal).length();
            return turned < vague + 1e-9 ? turned : Double.POSITIVE_INFINITY;
        }
        var middle = corners[0].plus(corners[1]).plus(corners[2]).times(1.0 / 3);
        double turned = candidate.surface().normal(middle).plus(normal).length();
        return turned < OFF_CHORD + vague ? 1 + turned : Double.POSITIVE_INFINITY;
    }

    private static boolean isNear(Candidate candidate, Vec3[] corners) {
        double most = candidate.surface() instanceof Plane ? ROUNDED : OFF_ROUND;
        for (var corner : corners) {
            if (!candidate.reaches(corner) || Math.abs(candidate.surface().distance(corner)) > most) {
                return false;
            }
        }
        return true;
    }

    /** Gives narrow triangles the surface of a neighbour, over the longest side that will do. */
    private void settle(Sides sides) {
        boolean more = true;
        while (more) {
            more = narrow.removeIf(t -> joins(t, sides));
        }
    }

    private boolean joins(int t, Sides sides) {
        double longest = 0;
        for (int side = 3 * t; side < 3 * t + 3; side++) {
            int label = labels[Sides.triangle(sides.twin(side))];
            double length = solid.vertex(sides.to(side))
                    .minus(solid.vertex(sides.from(side)))
                    .length();
            if (label != LOOSE && length > longest && isNear(t, label)) {
                longest = length;
                labels[t] = label;
            }
        }
        return longest > 0;
    }

    private boolean isNear(int t, int label) {
        var corners = corners(t);
        return candidates.stream().anyMatch(candidate -> candidate.number() == label && isNear(candidate, corners));
    }

    private Vec3[] corners(int t) {
        return new Vec3[] {
            solid.vertex(solid.corner(t, 0)), solid.vertex(solid.corner(t, 1)), solid.vertex(solid.corner(t, 2))
        };
    }

    private static double longest(Vec3[] corners) {
        return Math.max(
                corners[1].minus(corners[0]).length(),
                Math.max(
                        corners[2].minus(corners[1]).length(),
                        corners[0].minus(corners[2]).length()));
    }
}
