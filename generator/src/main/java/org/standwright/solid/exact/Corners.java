package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.geom.Vec3;

/** The vertices of a mesh in which edges end, and where they belong exactly. */
final class Corners {
    /** How far a corner may move from the mesh, mm: as far as a polygon may be off, twice, and a slanting cut as much more. */
    private static final double FARTHEST = 0.5;

    private final Model model;
    private final Borders borders;
    private final Seams seams;
    private final int[] numbers;
    private final List<Vec3> places = new ArrayList<>();
    private final Set<Integer> offenders = new HashSet<>();

    Corners(Model model, Borders borders, Seams seams) {
        this.model = model;
        this.borders = borders;
        this.seams = seams;
        this.numbers = new int[model.solid().vertexCount()];
        var out = new int[numbers.length];
        for (int side = 0; side < model.sides().count(); side++) {
            if (borders.isBorder(side)) {
                out[model.sides().from(side)]++;
            }
        }
        for (int side = 0; side < model.sides().count(); side++) {
            int vertex = model.sides().from(side);
            boolean ends =
                    out[vertex] > 2 || model.surface(model.regions().left(side)).isEmpty();
            if (borders.isBorder(side) && ends && numbers[vertex] == 0) {
                place(side, Optional.empty());
            }
        }
        closeLoops();
    }

    /** Edges need an end: a loop without any corner gets one. */
    private void closeLoops() {
        for (int region = 0; region < model.regions().count(); region++) {
            for (var loop : borders.around(region)) {
                boolean open = true;
                for (int side : loop) {
                    open &= !isCorner(model.sides().from(side));
                }
                if (open) {
                    var way = model.to(loop[0]).minus(model.from(loop[0]));
                    place(loop[0], Optional.of(Plane.through(model.from(loop[0]), way)));
                }
            }
        }
    }

    private void place(int side, Optional<Plane> also) {
        int vertex = model.sides().from(side);
        var regions = model.around(side);
        var surfaces = regions.stream()
                .flatMap(region -> model.surface(region).stream())
                .distinct()
                .toList();
        var better = Tangents.replaced(surfaces);
        also.ifPresent(better::add);
        seams.at(vertex).map(Seam::plane).ifPresent(better::add);
        var start = model.solid().vertex(vertex);
        var place = better.isEmpty() ? start : Constraint.solve(better, start);
        boolean right = Constraint.hold(better, place)
                && Constraint.hold(surfaces, place)
                && place.minus(start).length() < FARTHEST;
        if (!right) {
            offenders.addAll(Offenders.of(model, regions));
        }
        places.add(place);
        numbers[vertex] = places.size();
    }

    boolean isCorner(int vertex) {
        return numbers[vertex] > 0;
    }

    int number(int vertex) {
        return numbers[vertex] - 1;
    }

    Vec3 place(int vertex) {
        return places.get(number(vertex));
    }

    List<Vec3> places() {
        return places;
    }

    /** Regions that must go loose for want of a place for one of their corners. */
    Set<Integer> offenders() {
        return offenders;
    }
}
