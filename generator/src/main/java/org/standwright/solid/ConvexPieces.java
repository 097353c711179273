package org.standwright.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.solid.layer.Ring;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.face.BrokenFaceException;
import org.standwright.solid.mesh.face.Corners;
import org.standwright.solid.mesh.face.Triangles;

/** A ring cut into convex pieces corner to corner, for the kernel, which takes convex faces only. */
final class ConvexPieces {
    private ConvexPieces() {}

    /** Each piece as corners of the ring in turn: the ring itself when it is convex, else triangles. */
    static List<int[]> of(Ring ring) {
        if (ring.isConvex()) {
            return List.of(IntStream.range(0, ring.size()).toArray());
        }
        var corners = new Corners();
        for (int i = 0; i < ring.size(); i++) {
            corners.add(i, ring.u(i), ring.v(i));
        }
        corners.closeLoop();
        var triangles = triangles(corners);
        var pieces = new ArrayList<int[]>();
        for (int i = 0; i < triangles.length; i += 3) {
            pieces.add(Arrays.copyOfRange(triangles, i, i + 3));
        }
        return pieces;
    }

    /** The corners of the only loop have the numbers of the ring's. */
    private static int[] triangles(Corners corners) {
        try {
            return Triangles.of(corners);
        } catch (BrokenFaceException e) {
            throw new BrokenMeshException("an outline crosses itself on the 1/1024 mm grid");
        }
    }
}
