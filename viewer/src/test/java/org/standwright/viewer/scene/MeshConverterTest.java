package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import javafx.scene.shape.TriangleMesh;
import org.junit.jupiter.api.Test;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.Fineness;
import org.standwright.solid.Solid;
import org.standwright.solid.Solids;

/** Meshes are plain arrays: no screen is needed to look into them. */
class MeshConverterTest {
    private static final Material BOARD = new Material("board", 18, 680, Grain.ALONG_LENGTH);
    private static final Part PLAIN = Part.blank("shelf", BOARD, 400, 300);
    private static final Part DRILLED = PLAIN.with(Hole.through(100, 100, 20, "cable"));

    @Test
    void keepsEveryVertexAndTriangle() {
        var solid = Solids.of(PLAIN, Fineness.SCREEN);
        var mesh = MeshConverter.mesh(solid);

        assertThat(mesh.getPoints().size() / 3).isEqualTo(solid.vertexCount()).isEqualTo(8);
        assertThat(mesh.getFaces().size() / 6).isEqualTo(solid.triangleCount()).isEqualTo(12);
    }

    @Test
    void keepsTheWindingSoThatTheMeshEnclosesTheVolumeOfTheBoard() {
        assertThat(volume(MeshConverter.mesh(Solids.of(PLAIN, Fineness.SCREEN))))
                .isEqualTo(400.0 * 300 * 18);
    }

    @Test
    void showsAHoleAsMissingVolume() {
        double hole = Math.PI * 10 * 10 * 18;

        assertThat(volume(MeshConverter.mesh(Solids.of(DRILLED, Fineness.SCREEN))))
                .isCloseTo(400.0 * 300 * 18 - hole, within(10.0));
    }

    @Test
    void everyCoordinateIsExact() {
        Solid solid = Solids.of(DRILLED, Fineness.SCREEN);
        var points = MeshConverter.mesh(solid).getPoints();

        for (int i = 0; i < solid.vertexCount(); i++) {
            assertThat((double) points.get(3 * i)).isEqualTo(solid.vertex(i).x());
            assertThat((double) points.get(3 * i + 1)).isEqualTo(solid.vertex(i).y());
            assertThat((double) points.get(3 * i + 2)).isEqualTo(solid.vertex(i).z());
        }
    }

    @Test
    void smoothesNoEdge() {
        var mesh = MeshConverter.mesh(Solids.of(DRILLED, Fineness.SCREEN));

        assertThat(mesh.getFaceSmoothingGroups().size())
                .isEqualTo(mesh.getFaces().size() / 6);
        assertThat(mesh.getFaceSmoothingGroups().toArray(null)).containsOnly(0);
    }

    /** By the divergence theorem: a sixth of the sum of the triple products, above 0 only when seen from outside. */
    private static double volume(TriangleMesh mesh) {
        return IntStream.range(0, mesh.getFaces().size() / 6)
                        .mapToDouble(face ->
                                tripleProduct(corner(mesh, face, 0), corner(mesh, face, 1), corner(mesh, face, 2)))
                        .sum()
                / 6;
    }

    private static double[] corner(TriangleMesh mesh, int face, int corner) {
        int vertex = mesh.getFaces().get(6 * face + 2 * corner);
        return IntStream.range(0, 3)
                .mapToDouble(i -> mesh.getPoints().get(3 * vertex + i))
                .toArray();
    }

    private static double tripleProduct(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - b[2] * c[1])
                + a[1] * (b[2] * c[0] - b[0] * c[2])
                + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }
}
