package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/**
 * Finds a seam for every round region whose borders run round its axis: a straight row of mesh sides from the one such
 * border to the other, between places where nothing else meets.
 */
final class Seams {
    /** Sides within this of a straight line on the surface lie on it, mm. */
    private static final double STRAIGHT = 3.0 / Solid.PER_MM;

    private static final List<Vec3> AXES = List.of(
            new Vec3(1, 0, 0),
            new Vec3(0, 1, 0),
            new Vec3(0, 0, 1),
            new Vec3(-1, 0, 0),
            new Vec3(0, -1, 0),
            new Vec3(0, 0, -1));

    private final Model model;
    private final Borders borders;
    private final int[] degrees;
    private final Map<Integer, Seam> byRegion = new TreeMap<>();
    private final Map<Integer, Seam> byVertex = new HashMap<>();
    private final Set<Integer> without = new HashSet<>();

    Seams(Model model) {
        this.model = model;
        this.borders = new Borders(model.sides(), model.regions(), List.of());
        this.degrees = new int[model.solid().vertexCount()];
        for (int side = 0; side < model.sides().count(); side++) {
            if (borders.isBorder(side)) {
                degrees[model.sides().from(side)]++;
            }
        }
        for (int region = 0; region < model.regions().count(); region++) {
            find(region);
        }
    }

    /** The seam of a region, if it needs one. */
    Optional<Seam> of(int region) {
        return Optional.ofNullable(byRegion.get(region));
    }

    /** The seam that ends at a vertex. */
    Optional<Seam> at(int vertex) {
        return Optional.ofNullable(byVertex.get(vertex));
    }

    /** All sides on seams, in one direction. */
    List<Integer> sides() {
        return byRegion.values().stream().flatMap(seam -> seam.sides().stream()).toList();
    }

    /** Regions that need a seam and have no place for one. */
    Set<Integer> without() {
        return Set.copyOf(without);
    }

    private void find(int region) {
        var round = model.round(region);
        if (round.isEmpty()) {
            return;
        }
        var winding = borders.around(region).stream()
                .filter(loop -> Turning.windsRound(model, round.get(), loop))
                .toList();
        if (winding.isEmpty()) {
            return;
        }
        var seam = winding.size() == 2 ? seam(round.get(), winding.get(0), winding.get(1)) : Optional.<Seam>empty();
        if (seam.isEmpty()) {
            without.add(region);
            return;
        }
        byRegion.put(region, seam.get());
        var path = seam.get().sides();
        byVertex.put(model.sides().from(path.get(0)), seam.get());
        byVertex.put(model.sides().to(path.get(path.size() - 1)), seam.get());
    }

    private Optional<Seam> seam(Round round, int[] start, int[] end) {
        var ends = new HashSet<Integer>();
        for (int side : end) {
            ends.add(model.sides().from(side));
        }
        var zero = Math.abs(round.axis().x()) < 0.5 ? AXES.get(0) : AXES.get(1);
        return IntStream.of(start)
                .filter(side -> isFree(round, model.sides().from(side)))
                .boxed()
                .sorted(Comparator.comparingDouble(
                        side -> -round.arm(model.from(side)).unit().dot(zero)))
                .map(side -> seam(round, side, ends))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private boolean isFree(Round round, int vertex) {
        var other = at(vertex);
        return degrees[vertex] == 2 && (other.isEmpty() || other.get().round().isCoaxial(round));
    }

    /** From where a border begins along the surface to one of {@code ends}. */
    private Optional<Seam> seam(Round round, int border, Set<Integer> ends) {
        var path = new ArrayList<Integer>();
        int last = border;
        while (true) {
            var next = next(round, border, last, path.isEmpty());
            if (next.isEmpty() || path.size() > ends.size() + degrees.length) {
                return Optional.empty();
            }
            last = next.get();
            path.add(last);
            int vertex = model.sides().to(last);
            if (degrees[vertex] > 0) {
                return ends.contains(vertex) && isFree(round, vertex)
                        ? seam(round, path, model.sides().from(border), vertex)
                        : Optional.empty();
            }
        }
    }

    private Optional<Seam> seam(Round round, List<Integer> path, int from, int to) {
        var one = at(from);
        var other = at(to);
        if (one.isPresent()
                && other.isPresent()
                && one.get().out().dot(other.get().out()) < 1 - 1e-12) {
            return Optional.empty();
        }
        var known = one.or(() -> other).map(Seam::out);
        return Optional.of(new Seam(
                round, known.orElseGet(() -> out(round, model.solid().vertex(from))), path));
    }

    /** Exactly along an axis where the mesh is as near as it can be. */
    private static Vec3 out(Round round, Vec3 at) {
        var arm = round.arm(at);
        return AXES.stream()
                .filter(axis -> axis.dot(arm) > 0 && axis.cross(arm).length() < STRAIGHT)
                .findFirst()
                .orElseGet(arm::unit);
    }

    /** The side that goes straight on along the surface: from where a border begins, or from the end of the last side. */
    private Optional<Integer> next(Round round, int border, int last, boolean first) {
        int start = first ? border : model.sides().twin(last);
        var origin = model.from(border);
        var heading = first ? 0 : Math.signum(round.height(model.to(last)) - round.height(origin));
        int side = start;
        do {
            int before = Sides.before(side);
            if (borders.isBorder(before)) {
                return Optional.empty();
            }
            side = model.sides().twin(before);
            if (side != start && isStraight(round, origin, model.from(side), model.to(side), heading)) {
                return Optional.of(side);
            }
        } while (side != start);
        return Optional.empty();
    }

    private static boolean isStraight(Round round, Vec3 origin, Vec3 from, Vec3 to, double heading) {
        var one = round.arm(origin);
        var other = round.arm(to);
        double sideways = Math.abs(round.axis().dot(one.cross(other))) / Math.max(one.length(), other.length());
        double along = round.height(to) - round.height(from);
        return sideways < STRAIGHT && one.dot(other) > 0 && (heading == 0 ? along != 0 : along * heading > 0);
    }
}
