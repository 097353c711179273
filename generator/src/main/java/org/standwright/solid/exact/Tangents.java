package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.geom.Grid;

/**
 * Where two surfaces only touch, both together say badly where their line is. The plane through it and an axis takes the
 * round one's place.
 */
final class Tangents {
    private Tangents() {}

    /** What a point on all these surfaces can be worked out from. */
    static List<Surface> replaced(List<Surface> surfaces) {
        var better = new ArrayList<Surface>();
        var replaced = new HashSet<Surface>();
        for (var one : surfaces) {
            for (var other : surfaces) {
                if (one instanceof Cylinder round && other instanceof Plane plane) {
                    line(round, plane).ifPresent(line -> replace(better, line, replaced, round));
                } else if (one instanceof Cylinder round && other instanceof Cylinder second && one != other) {
                    line(round, second)
                            .ifPresent(lines -> lines.forEach(line -> replace(better, line, replaced, round)));
                }
            }
        }
        surfaces.stream().filter(surface -> !replaced.contains(surface)).forEach(better::add);
        return better;
    }

    private static void replace(List<Surface> better, Plane line, Set<Surface> replaced, Cylinder round) {
        better.add(line);
        replaced.add(round);
    }

    static Optional<Plane> line(Cylinder round, Plane plane) {
        boolean touch = Math.abs(round.axis().dot(plane.normal())) < Round.PARALLEL
                && Grid.same(Math.abs(plane.distance(round.point())), round.radius());
        return touch ? Optional.of(Plane.through(round.point(), round.axis().cross(plane.normal()))) : Optional.empty();
    }

    private static Optional<List<Plane>> line(Cylinder round, Cylinder other) {
        if (round.axis().cross(other.axis()).length() > Round.PARALLEL) {
            return Optional.empty();
        }
        var arm = round.arm(other.point());
        double apart = arm.length();
        boolean outside = Grid.same(apart, round.radius() + other.radius());
        boolean inside = Grid.same(apart, Math.abs(round.radius() - other.radius())) && apart > Grid.STEP;
        if (!outside && !inside) {
            return Optional.empty();
        }
        var out = arm.unit().times(inside && round.radius() < other.radius() ? -1 : 1);
        return Optional.of(List.of(
                Plane.through(round.point(), round.axis().cross(out)),
                Plane.through(round.point().plus(out.times(round.radius())), out)));
    }
}
