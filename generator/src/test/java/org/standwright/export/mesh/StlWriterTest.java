package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.GeometryFormat3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.standwright.export.SampleAssembly;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.ReadBack;
import org.standwright.solid.SampleParts;
import org.standwright.solid.Solids;

/** Rules of the StereoLithography Interface Specification, 1989 (references, section 8, [C]). */
class StlWriterTest {
    @Test
    void aPlainBoardTakes684Bytes() {
        assertThat(stl(SampleParts.plain())).hasSize(684);
    }

    @Test
    void everyTriangleTakesFiftyBytesBehindAHeaderOf84() {
        var solid = Solids.of(SampleParts.shelves());
        var stl = stl(SampleParts.shelves());

        assertThat(stl).hasSize(84 + 50 * solid.triangleCount());
        assertThat(ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN).getInt(80))
                .isEqualTo(solid.triangleCount());
    }

    @Test
    void theHeaderDoesNotLookLikeTheTextForm() {
        var header = new String(stl(SampleParts.plain()), 0, 80, StandardCharsets.US_ASCII);

        assertThat(header).doesNotStartWith("solid").startsWith("binary STL in mm");
    }

    @Test
    void normalsAreOneLongAndFollowTheRightHandRule() {
        for (var triangle : ReadBack.of(stl(SampleParts.shelves())).triangles()) {
            var n = Vector3D.of(
                    triangle.normal().x(),
                    triangle.normal().y(),
                    triangle.normal().z());
            var a = vector(triangle.a());
            var cross =
                    vector(triangle.b()).subtract(a).cross(vector(triangle.c()).subtract(a));

            assertThat(n.norm()).isCloseTo(1, within(1e-6));
            assertThat(n.dot(cross.normalize())).isCloseTo(1, within(1e-6));
        }
    }

    @Test
    void anotherLibraryFindsTheSameVolumeCentreAndBox() {
        for (var part : List.of(SampleParts.plain(), SampleParts.drawerSide(), SampleParts.crossing())) {
            var solid = Solids.of(part);
            var mesh = IO3D.readTriangleMesh(
                    new StreamGeometryInput(new ByteArrayInputStream(stl(part))),
                    GeometryFormat3D.STL,
                    Precision.doubleEquivalenceOfEpsilon(1e-6));
            var tree = mesh.toTree();

            assertThat(mesh.getFaceCount()).isEqualTo(solid.triangleCount());
            assertThat(tree.getSize()).isCloseTo(solid.volume(), within(1e-6 * solid.volume()));
            assertThat(tree.getCentroid().distance(vector(solid.centroid()))).isLessThan(1e-4);
            assertThat(mesh.getBounds().getMax()).isEqualTo(Vector3D.of(part.length(), part.width(), part.thickness()));
            assertThat(mesh.getBounds().getMin()).isEqualTo(Vector3D.ZERO);
        }
    }

    @Test
    void anAssemblyIsAllItsPartsInOneFile() throws IOException {
        var solids = AssemblySolids.of(SampleAssembly.twoSidesAndABack());
        var out = new ByteArrayOutputStream();
        StlWriter.write(solids, out);

        var read = ReadBack.of(out.toByteArray());
        double volume = solids.solids().stream()
                .mapToDouble(placed -> placed.solid().volume())
                .sum();
        assertThat(read.openEdges()).isZero();
        assertThat(read.volume()).isCloseTo(volume, within(1e-3));
    }

    private static Vector3D vector(ReadBack.Point point) {
        return Vector3D.of(point.x(), point.y(), point.z());
    }

    private static Vector3D vector(Vec3 point) {
        return Vector3D.of(point.x(), point.y(), point.z());
    }

    private static byte[] stl(Part part) {
        return ReadBack.stl(Solids.of(part));
    }
}
