package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.cross;
import static org.standwright.viewer.scene.measure.Products.dot;
import static org.standwright.viewer.scene.measure.Products.length;
import static org.standwright.viewer.scene.measure.Products.unit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/** Finds the wall of a hole: flat patches, each turned a little from the last about one axis, until they meet again. */
final class RoundWall {
    /** The largest turn from one side of a round hole to the next: that of 12 sides and some rounding, degrees. */
    private static final double LARGEST_TURN = 31;

    private static final double COS_LARGEST_TURN = StrictMath.cos(StrictMath.toRadians(LARGEST_TURN));

    /** Sine of the angle between directions that are the same but for the grid. */
    private static final double SAME_DIRECTION = 2e-3;

    private final Solid solid;
    private final Neighbours neighbours;
    private final Map<Integer, FlatPatch> patches = new LinkedHashMap<>();

    RoundWall(Solid solid, Neighbours neighbours) {
        this.solid = solid;
        this.neighbours = neighbours;
    }

    /** The wall that a patch is a side of; nothing for one that is no part of a full circle. */
    Optional<RoundFace> around(FlatPatch patch) {
        remember(patch);
        return axis(patch).flatMap(axis -> new Circle(axis, sides(patch, axis), solid).face());
    }

    /** Along the first edge at which the next patch is turned but a little. */
    private Optional<Vec3> axis(FlatPatch patch) {
        for (int triangle : patch.numbers()) {
            for (int side = 0; side < 3; side++) {
                if (turnsALittle(patch, patch(neighbours.beyond(triangle, side)))) {
                    var edge = edge(triangle, side);
                    // an edge as short as the grid's step has no direction worth following
                    if (length(edge) > 16.0 / Solid.PER_MM) {
                        return Optional.of(unit(edge));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** All patches that follow each other about the axis. */
    private List<FlatPatch> sides(FlatPatch first, Vec3 axis) {
        var found = new ArrayList<>(List.of(first));
        var open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            var patch = open.remove();
            for (var next : beside(patch, axis)) {
                if (!found.contains(next)) {
                    found.add(next);
                    open.add(next);
                }
            }
        }
        return found;
    }

    private List<FlatPatch> beside(FlatPatch patch, Vec3 axis) {
        var beside = new ArrayList<FlatPatch>();
        for (int triangle : patch.numbers()) {
            for (int side = 0; side < 3; side++) {
                var next = patch(neighbours.beyond(triangle, side));
                if (turnsALittle(patch, next)
                        && length(cross(unit(edge(triangle, side)), axis)) < SAME_DIRECTION
                        && Math.abs(dot(next.normal(), axis)) < SAME_DIRECTION) {
                    beside.add(next);
                }
            }
        }
        return beside;
    }

    private static boolean turnsALittle(FlatPatch a, FlatPatch b) {
        return !a.equals(b) && dot(a.normal(), b.normal()) > COS_LARGEST_TURN;
    }

    private Vec3 edge(int triangle, int side) {
        var corners = Triangle.of(solid, triangle);
        return corners.corner(side + 1).minus(corners.corner(side));
    }

    private FlatPatch patch(int triangle) {
        var known = patches.get(triangle);
        return known == null ? remember(FlatPatch.around(triangle, solid, neighbours)) : known;
    }

    private FlatPatch remember(FlatPatch patch) {
        patch.numbers().forEach(number -> patches.put(number, patch));
        return patch;
    }

    /** All triangles of some patches. */
    static List<Triangle> triangles(List<FlatPatch> sides, Solid solid) {
        var numbers = new TreeSet<Integer>();
        sides.forEach(side -> numbers.addAll(side.numbers()));
        return numbers.stream().map(number -> Triangle.of(solid, number)).toList();
    }
}
