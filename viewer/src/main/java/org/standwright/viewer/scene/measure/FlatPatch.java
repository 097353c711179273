package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.dot;
import static org.standwright.viewer.scene.measure.Products.length;
import static org.standwright.viewer.scene.measure.Products.unit;

import java.util.ArrayDeque;
import java.util.List;
import java.util.TreeSet;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/**
 * Triangles of a solid that hang together in one plane.
 *
 * @param numbers of the triangles, in rising order
 * @param normal of the largest of them, out of the solid, length 1
 * @param at how far out along the normal their plane lies from the origin, mm
 */
record FlatPatch(List<Integer> numbers, Vec3 normal, double at) {
    /** How far corners may lie off their plane, which is slanted and they on the grid, mm. */
    private static final double ROUNDING = 1.5 / Solid.PER_MM;

    /** Cosine beyond which a neighbour that narrow as rounding is no longer taken for part of the plane. */
    private static final double ALIKE = 0.9;

    /**
     * The patch around a triangle. Where that is so narrow that its own plane is hardly known, the plane of the largest
     * triangle beside it counts, and so on from there.
     */
    static FlatPatch around(int triangle, Solid solid, Neighbours neighbours) {
        int base = triangle;
        var grown = grown(base, solid, neighbours);
        for (int largest = largest(grown, solid); area(largest, solid) > area(base, solid); ) {
            base = largest;
            grown = grown(base, solid, neighbours);
            largest = largest(grown, solid);
        }
        var plane = Triangle.of(solid, base);
        var normal = unit(plane.normal());
        return new FlatPatch(List.copyOf(grown), normal, dot(normal, plane.a()));
    }

    private static TreeSet<Integer> grown(int base, Solid solid, Neighbours neighbours) {
        var plane = Triangle.of(solid, base);
        var normal = unit(plane.normal());
        double at = dot(normal, plane.a());
        var found = new TreeSet<>(List.of(base));
        var open = new ArrayDeque<>(List.of(base));
        while (!open.isEmpty()) {
            int triangle = open.remove();
            for (int side = 0; side < 3; side++) {
                int next = neighbours.beyond(triangle, side);
                if (lies(Triangle.of(solid, next), normal, at) && found.add(next)) {
                    open.add(next);
                }
            }
        }
        return found;
    }

    private static boolean lies(Triangle triangle, Vec3 normal, double at) {
        for (int i = 0; i < 3; i++) {
            if (Math.abs(dot(normal, triangle.corner(i)) - at) > ROUNDING) {
                return false;
            }
        }
        return dot(normal, unit(triangle.normal())) > ALIKE;
    }

    private static int largest(TreeSet<Integer> triangles, Solid solid) {
        int largest = triangles.first();
        for (int triangle : triangles) {
            if (area(triangle, solid) > area(largest, solid)) {
                largest = triangle;
            }
        }
        return largest;
    }

    /** Twice its area, mm². */
    private static double area(int triangle, Solid solid) {
        return length(Triangle.of(solid, triangle).normal());
    }
}
