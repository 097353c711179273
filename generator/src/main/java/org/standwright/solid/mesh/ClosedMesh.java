package org.standwright.solid.mesh;

import java.util.List;

/** From the pieces of a solid's faces to the mesh of its surface. */
public final class ClosedMesh {
    private ClosedMesh() {}

    /**
     * The closed mesh, checked, of faces in pieces that together bound a solid but need not meet corner to corner.
     * Throws {@link BrokenMeshException} when rounding to the grid has spoilt them.
     *
     * @param planes that the numbers in {@code pieces} come from
     */
    public static Mesh of(List<Facet> pieces, Planes planes) {
        var mesh = TouchSplit.split(FaceRebuild.rebuild(pieces, planes));
        EdgeCheck.check(mesh);
        return mesh;
    }
}
