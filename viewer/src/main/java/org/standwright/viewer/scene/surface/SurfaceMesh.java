package org.standwright.viewer.scene.surface;

import java.util.Arrays;
import javafx.scene.shape.TriangleMesh;

/** A surface as the screen wants it. */
public final class SurfaceMesh {
    private SurfaceMesh() {}

    /** Every triangle flat. */
    public static TriangleMesh flat(Surface surface) {
        return mesh(surface, 0);
    }

    /** Shaded as if it were round wherever triangles share a corner. */
    public static TriangleMesh smooth(Surface surface) {
        return mesh(surface, 1);
    }

    private static TriangleMesh mesh(Surface surface, int smoothingGroup) {
        var mesh = new TriangleMesh();
        mesh.getPoints().setAll(surface.floats());
        mesh.getTexCoords().setAll(0, 0);
        mesh.getFaces().setAll(faces(surface));
        var groups = new int[surface.triangleCount()];
        Arrays.fill(groups, smoothingGroup);
        mesh.getFaceSmoothingGroups().setAll(groups);
        return mesh;
    }

    /** All corners share one point of the texture, which there is none of. */
    private static int[] faces(Surface surface) {
        var faces = new int[6 * surface.triangleCount()];
        for (int i = 0; i < faces.length; i += 2) {
            faces[i] = surface.corner(i / 6, i / 2 % 3);
        }
        return faces;
    }
}
