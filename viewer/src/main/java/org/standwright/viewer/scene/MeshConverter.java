package org.standwright.viewer.scene;

import javafx.scene.shape.TriangleMesh;
import org.standwright.solid.Solid;

/** A solid as the screen wants it: same vertices, same winding, every face flat. */
final class MeshConverter {
    /** Nothing is textured, so that all corners share one point of the texture. */
    private static final int TEXTURE_POINT = 0;

    private MeshConverter() {}

    static TriangleMesh mesh(Solid solid) {
        return mesh(points(solid), faces(solid));
    }

    /** @param faces three pairs of a point and a texture point for each triangle */
    static TriangleMesh mesh(float[] points, int[] faces) {
        var mesh = new TriangleMesh();
        mesh.getPoints().setAll(points);
        mesh.getTexCoords().setAll(0, 0);
        mesh.getFaces().setAll(faces);
        mesh.getFaceSmoothingGroups().setAll(new int[faces.length / 6]); // group 0: no edge is smoothed
        return mesh;
    }

    static float[] points(Solid solid) {
        var points = new float[3 * solid.vertexCount()];
        for (int i = 0; i < solid.vertexCount(); i++) {
            var vertex = solid.vertex(i);
            points[3 * i] = (float) vertex.x();
            points[3 * i + 1] = (float) vertex.y();
            points[3 * i + 2] = (float) vertex.z();
        }
        return points;
    }

    private static int[] faces(Solid solid) {
        var faces = new int[6 * solid.triangleCount()];
        for (int i = 0; i < 3 * solid.triangleCount(); i++) {
            faces[2 * i] = solid.corner(i / 3, i % 3);
            faces[2 * i + 1] = TEXTURE_POINT;
        }
        return faces;
    }
}
