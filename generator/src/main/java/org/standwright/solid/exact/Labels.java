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
    /** Even then they look roughly the right way. */
    private static final double MOST_VAGUE = 1;

    private final Solid solid;
    private final List<Surface> surfaces;
    private final int[] labels;
    private final List<Integer> narrow = new ArrayList<>();

    private Labels(Solid solid, List<Surface> surfaces) {
        this.solid = solid;
        this.surfaces = surfaces;
        this.labels = new int[solid.triangleCount()];
        Arrays.fill(labels, LOOSE);
    }

    /** Of each triangle the number of its surface, or {@link #LOOSE}. */
    static int[] of(Solid solid, Sides sides, List<Surface> surfaces) {
        var labels = new Labels(solid, surfaces);
        for (int t = 0; t < labels.labels.length; t++) {
            labels.label(t);
        }
        labels.settle(sides);
        return labels.labels;
    }

    private void label(int t) {
        var corners = corners(t);
        var normal = normal(corners);
        double vague = 1.5 * ROUNDED * longest(corners) / normal.length();
        if (vague > VAGUE) {
            narrow.add(t);
            return;
        }
        choose(t, corners, normal.unit(), vague);
    }

    private void choose(int t, Vec3[] corners, Vec3 normal, double vague) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < surfaces.size(); i++) {
            double off = off(surfaces.get(i), corners, normal, vague);
            if (off < best) {
                best = off;
                labels[t] = i;
            }
        }
    }

    /** How badly a triangle stands for a surface; infinitely if it doesn't. */
    private static double off(Surface surface, Vec3[] corners, Vec3 normal, double vague) {
        if (!isNear(surface, corners)) {
            return Double.POSITIVE_INFINITY;
        }
        boolean flat = surface instanceof Plane;
        var middle = corners[0].plus(corners[1]).plus(corners[2]).times(1.0 / 3);
        var looks = surface.normal(middle).times(flat ? 1 : -1);
        double turned = looks.minus(normal).length();
        return turned < (flat ? vague + 1e-9 : OFF_CHORD + vague)
                ? Math.pow(away(surface, corners) / GRID, 2) + Math.pow(turned / vague, 2)
                : Double.POSITIVE_INFINITY;
    }

    /** How far the farthest corner lies off a surface, mm. */
    private static double away(Surface surface, Vec3[] corners) {
        double farthest = 0;
        for (var corner : corners) {
            farthest = Math.max(farthest, Math.abs(surface.distance(corner)));
            if (farthest > OFF_ROUND) {
                return farthest;
            }
        }
        return farthest;
    }

    /**
     * Gives narrow triangles the surface of a neighbour, over the longest side that will do; if all round are as narrow,
     * one of them the surface that it looks most like.
     */
    private void settle(Sides sides) {
        while (!narrow.isEmpty()) {
            if (!narrow.removeIf(t -> joins(t, sides))) {
                int t = narrow.remove(0);
                var corners = corners(t);
                choose(t, corners, normal(corners).unit(), MOST_VAGUE);
            }
        }
    }

    private boolean joins(int t, Sides sides) {
        double longest = 0;
        for (int side = 3 * t; side < 3 * t + 3; side++) {
            int label = labels[Sides.triangle(sides.twin(side))];
            double length = solid.vertex(sides.to(side))
                    .minus(solid.vertex(sides.from(side)))
                    .length();
            if (label != LOOSE && length > longest && isNear(surfaces.get(label), corners(t))) {
                longest = length;
                labels[t] = label;
            }
        }
        return longest > 0;
    }

    private static boolean isNear(Surface surface, Vec3[] corners) {
        return away(surface, corners) <= (surface instanceof Plane ? ROUNDED : OFF_ROUND);
    }

    private Vec3[] corners(int t) {
        return new Vec3[] {
            solid.vertex(solid.corner(t, 0)), solid.vertex(solid.corner(t, 1)), solid.vertex(solid.corner(t, 2))
        };
    }

    private static Vec3 normal(Vec3[] corners) {
        return corners[1].minus(corners[0]).cross(corners[2].minus(corners[0]));
    }

    private static double longest(Vec3[] corners) {
        return Math.max(
                corners[1].minus(corners[0]).length(),
                Math.max(
                        corners[2].minus(corners[1]).length(),
                        corners[0].minus(corners[2]).length()));
    }
}
