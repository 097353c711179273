package org.standwright.viewer.scene.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.surface.FlatRegion;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;

/** The rings around a cut face, side by side from point to point, and the face within them. */
final class Rims {
    private final PartPlane plane;
    private final Map<Integer, Vec3> places = new LinkedHashMap<>();
    private final Map<Integer, Integer> next = new HashMap<>();

    Rims(PartPlane plane) {
        this.plane = plane;
    }

    /** Where a point of the cut lies. */
    void place(int point, Vec3 at) {
        places.put(point, at);
    }

    /** A side from one point to the next, the face on its left. */
    void add(int from, int to) {
        next.put(from, to);
    }

    Surface cap() {
        var rings = rings();
        var holes = rings.stream().filter(ring -> ring.area() < 0).toList();
        var outsides = rings.stream().filter(ring -> ring.area() > 0).toList();
        var inside = new HashMap<Ring, List<Ring>>();
        for (var hole : holes) {
            Ring.around(hole, outsides)
                    .ifPresent(outside -> inside.computeIfAbsent(outside, none -> new ArrayList<>())
                            .add(hole));
        }
        var cap = new SurfaceBuilder();
        outsides.forEach(outside -> fill(outside, inside.getOrDefault(outside, List.of()), cap));
        return cap.build();
    }

    private List<Ring> rings() {
        var rings = new ArrayList<Ring>();
        var seen = new HashSet<Integer>();
        for (int first : places.keySet()) {
            var ring = new ArrayList<Vec3>();
            for (int at = first; seen.add(at); at = next.get(at)) {
                ring.add(places.get(at));
            }
            if (!ring.isEmpty()) {
                rings.add(Ring.of(ring, plane));
            }
        }
        return rings;
    }

    private static void fill(Ring outside, List<Ring> holes, SurfaceBuilder cap) {
        var places = new ArrayList<>(outside.places());
        var corners = new ArrayList<>(outside.corners());
        var rings = new ArrayList<List<Integer>>();
        for (var hole : holes) {
            rings.add(numbers(places.size(), hole.places().size()));
            places.addAll(hole.places());
            corners.addAll(hole.corners());
        }
        var indices = places.stream().map(cap::point).toList();
        new FlatRegion(corners, numbers(0, outside.places().size()), rings)
                .triangles()
                .forEach(triangle ->
                        cap.triangle(indices.get(triangle[0]), indices.get(triangle[1]), indices.get(triangle[2])));
    }

    private static List<Integer> numbers(int from, int count) {
        return IntStream.range(from, from + count).boxed().toList();
    }
}
