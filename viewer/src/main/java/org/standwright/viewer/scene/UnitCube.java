package org.standwright.viewer.scene;

import javafx.scene.shape.TriangleMesh;

/** A cube from (0, 0, 0) to (1, 1, 1), of which every block is made by stretching. */
final class UnitCube {
    private static final float[] POINTS = new float[24];
    private static final int[] SQUARES = {0, 2, 3, 1, 4, 5, 7, 6, 0, 1, 5, 4, 2, 6, 7, 3, 0, 4, 6, 2, 1, 3, 7, 5};
    private static final int[] EDGES = {0, 1, 2, 3, 4, 5, 6, 7, 0, 2, 1, 3, 4, 6, 5, 7, 0, 4, 1, 5, 2, 6, 3, 7};

    static {
        for (int i = 0; i < 8; i++) { // corner i: x is its lowest bit
            POINTS[3 * i] = i & 1;
            POINTS[3 * i + 1] = i >> 1 & 1;
            POINTS[3 * i + 2] = i >> 2;
        }
    }

    private UnitCube() {}

    static Meshes.Drawn drawn() {
        return new Meshes.Drawn(faces(), lines());
    }

    private static TriangleMesh faces() {
        var faces = new int[72];
        for (int square = 0; square < 6; square++) {
            int[] corners = {0, 1, 2, 0, 2, 3};
            for (int i = 0; i < 6; i++) {
                faces[12 * square + 2 * i] = SQUARES[4 * square + corners[i]];
            }
        }
        return MeshConverter.mesh(POINTS, faces);
    }

    private static TriangleMesh lines() {
        var faces = new int[72];
        for (int edge = 0; edge < 12; edge++) {
            faces[6 * edge] = EDGES[2 * edge];
            faces[6 * edge + 2] = EDGES[2 * edge + 1];
            faces[6 * edge + 4] = EDGES[2 * edge + 1];
        }
        return MeshConverter.mesh(POINTS, faces);
    }
}
