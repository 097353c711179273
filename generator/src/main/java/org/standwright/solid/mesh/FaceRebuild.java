package org.standwright.solid.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Puts the faces of a carved blank together again from the pieces that the kernel leaves, and cuts them into triangles
 * that meet corner to corner. All that counts is which edges belong to which plane; no polygon is ever overlaid.
 */
final class FaceRebuild {
    /** A corner this close to an edge lies on it: 1e-5 mm, in 1/1024 mm. */
    private static final double SAME = 0.01;
    /** On the grid, a corner this close to an edge bends it, lest the two should change sides: in 1/1024 mm. */
    private static final double HALF_A_STEP = 0.5;
    /** Bending one edge may bring it near the next corner, but seldom twice. */
    private static final int ROUNDS = 8;

    private FaceRebuild() {}

    static Mesh rebuild(List<Facet> facets, Planes planes) {
        var welder = new Welder();
        var pieces = boundaries(facets, welder);
        var faces = TJunctions.broken(pieces, welder.points(), SAME);
        var corners = StraightRuns.joined(faces, welder.points());
        var snap = new GridSnap(corners, welder.points());
        return triangulated(settled(snap.edges(), snap.points()), snap.points(), planes);
    }

    private static EdgeChain boundaries(List<Facet> facets, Welder welder) {
        var sum = new EdgeSum();
        for (var facet : facets) {
            var xyz = facet.xyz();
            int last = facet.corners() - 1;
            int from = welder.number(xyz[3 * last], xyz[3 * last + 1], xyz[3 * last + 2]);
            for (int i = 0; i <= last; i++) {
                int to = welder.number(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
                sum.add(facet.plane(), from, to);
                from = to;
            }
        }
        return sum.total();
    }

    private static EdgeChain settled(EdgeChain chain, Points points) {
        var before = chain;
        for (int round = 0; round < ROUNDS; round++) {
            var after = TJunctions.broken(before, points, HALF_A_STEP);
            if (after.isSame(before)) {
                return after;
            }
            before = after;
        }
        throw new BrokenMeshException("its features run too close to each other");
    }

    private static Mesh triangulated(EdgeChain chain, Points points, Planes planes) {
        var triangles = new ArrayList<int[]>();
        for (int start = 0; start < chain.count(); ) {
            int end = chain.endOfPlane(start);
            var flat = new Flat(planes.get(chain.plane(start)), points);
            triangles.addAll(Sweep.triangles(Loops.of(chain, start, end, flat), flat));
            start = end;
        }
        return new Mesh(
                points.onGrid(), triangles.stream().flatMapToInt(Arrays::stream).toArray());
    }
}
