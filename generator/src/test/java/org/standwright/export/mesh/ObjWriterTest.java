package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.function.ToIntFunction;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.GeometryFormat3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.standwright.export.SampleAssembly;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Solid;

/** Rules of the Wavefront specification (references, section 8, [C]). */
class ObjWriterTest {
    private final AssemblySolids solids = AssemblySolids.of(SampleAssembly.twoSidesAndABack());

    @Test
    void saysWhatItIsAndInWhichUnit() throws IOException {
        assertThat(obj()).startsWith("""
                        # W_ller_s_stand by Standwright
                        # units: mm, z up
                        mtllib assembly-mm.mtl
                        g carcass
                        o left_side
                        usemtl birch_plywood
                        v\s""");
    }

    @Test
    void everyPartIsAnObjectWithAPlainNameOfItsOwn() throws IOException {
        assertThat(obj().lines().filter(line -> line.startsWith("o ")))
                .containsExactly("o left_side", "o right_side", "o right_side_2", "o drawer");
    }

    @Test
    void everyPartIsInTheGroupThatItMovesWithAndOfItsMaterial() throws IOException {
        var read = ReadObj.of(obj().getBytes(StandardCharsets.US_ASCII));

        assertThat(read.library()).isEqualTo("assembly-mm.mtl");
        assertThat(read.groups()).containsExactly("carcass", "carcass", "rest", "rest");
        assertThat(read.materials())
                .containsExactly("birch_plywood", "birch_plywood", "birch_plywood", "drawer_plywood");
    }

    @Test
    void everyMaterialThatIsNamedHasItsColour() throws IOException {
        var out = new ByteArrayOutputStream();
        MtlWriter.write(solids, out);

        // #d9b982: 217, 185 and 130 of 255
        assertThat(out.toString(StandardCharsets.US_ASCII)).isEqualTo("""
                        # materials by Standwright
                        newmtl birch_plywood
                        Kd 0.851 0.725 0.51
                        illum 1
                        newmtl drawer_plywood
                        Kd 0.851 0.725 0.51
                        illum 1
                        """);
    }

    @Test
    void everyVertexAndTriangleHasItsLine() throws IOException {
        var lines = obj().lines().toList();

        assertThat(lines.stream().filter(line -> line.startsWith("v ")).count()).isEqualTo(sum(Solid::vertexCount));
        assertThat(lines.stream().filter(line -> line.startsWith("f ")).count()).isEqualTo(sum(Solid::triangleCount));
    }

    @Test
    void writesCoordinatesInFullAndWithoutExponents() throws IOException {
        assertThat(obj().lines().filter(line -> line.startsWith("v ")))
                .allMatch(line -> line.matches("v( -?\\d+(\\.\\d{1,10})?){3}"))
                .anyMatch(line -> line.startsWith("v 500.7001953125 "));
    }

    @Test
    void anotherLibraryReadsEveryPartBack() throws IOException {
        var mesh = IO3D.readTriangleMesh(
                new StreamGeometryInput(new ByteArrayInputStream(obj().getBytes(StandardCharsets.US_ASCII))),
                GeometryFormat3D.OBJ,
                Precision.doubleEquivalenceOfEpsilon(1e-6));

        assertThat(mesh.getVertexCount()).isEqualTo(sum(Solid::vertexCount));
        assertThat(mesh.getFaceCount()).isEqualTo(sum(Solid::triangleCount));
        double volume = solids.solids().stream()
                .mapToDouble(placed -> placed.solid().volume())
                .sum();
        double read = mesh.triangleStream()
                .mapToDouble(t -> t.getPoint1().dot(t.getPoint2().cross(t.getPoint3())) / 6)
                .sum();
        assertThat(read).isCloseTo(volume, within(1e-6 * volume));
    }

    @Test
    void comesOutTheSameEveryTime() throws IOException {
        var first = obj();
        var again = new ByteArrayOutputStream();
        ObjWriter.write(AssemblySolids.of(SampleAssembly.twoSidesAndABack()), "assembly-mm.mtl", again);

        assertThat(again.toString(StandardCharsets.US_ASCII)).isEqualTo(first);
    }

    private int sum(ToIntFunction<Solid> count) {
        return solids.solids().stream()
                .mapToInt(placed -> count.applyAsInt(placed.solid()))
                .sum();
    }

    private String obj() throws IOException {
        var out = new ByteArrayOutputStream();
        ObjWriter.write(solids, "assembly-mm.mtl", out);
        return out.toString(StandardCharsets.US_ASCII);
    }
}
