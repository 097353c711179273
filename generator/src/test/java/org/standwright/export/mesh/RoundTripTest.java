package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;

/** Every part of every file as readers that are not ours find it: its shape, and where it belongs. */
class RoundTripTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final int PARTS = FULL ? 1_000 : 50;
    /**
     * How many presets are read again as text, which takes as long as all other formats together; {@link
     * StlTextWriterTest} and, outside, assimp find in it what the binary form holds.
     */
    private static final int PRESETS_AS_TEXT = FULL ? Integer.MAX_VALUE : 3;

    /** As a share of the volume. */
    private static final double VOLUME = 1e-6;
    /** What sums over thousands of triangles may lose, mm. */
    private static final double SUMS = 1e-6;

    private static List<AssemblySolids> presets;
    private static List<AssemblySolids> atRandom;

    @BeforeAll
    static void build() {
        presets = MeshSamples.presets().toList();
        atRandom = MeshSamples.randomParts(PARTS).toList();
    }

    @ParameterizedTest
    @EnumSource
    void everyPartOfEveryPresetComesBackWhereItBelongs(MeshFormat format) throws IOException {
        assertThat(presets).hasSizeGreaterThan(10);
        int most = format == MeshFormat.STL_TEXT ? PRESETS_AS_TEXT : Integer.MAX_VALUE;
        for (var assembly : presets.stream().limit(most).toList()) {
            check(assembly, format);
        }
    }

    @ParameterizedTest
    @EnumSource
    void partsAtRandomComeBack(MeshFormat format) throws IOException {
        for (var assembly : atRandom) {
            check(assembly, format);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theSamePresetGivesTheSameBytes(MeshFormat format) {
        var again = MeshSamples.presets().findFirst().orElseThrow();

        assertThat(format.bytes(again)).isEqualTo(format.bytes(presets.get(0)));
    }

    private static void check(AssemblySolids assembly, MeshFormat format) throws IOException {
        var read = format.read(format.bytes(assembly), assembly);
        var shift = MeshFormat.vector(format.shift(assembly));

        assertThat(read).as(assembly.name()).hasSameSizeAs(assembly.solids());
        for (int i = 0; i < read.size(); i++) {
            check(assembly.solids().get(i), read.get(i), shift, format.rounding());
        }
    }

    private static void check(PlacedSolid placed, ReadMesh read, Vector3D shift, double rounding) {
        var solid = placed.inPlace();
        var box = solid.box();
        double volume = solid.volume();

        assertThat(read.triangles()).as(placed.label()).hasSize(solid.triangleCount());
        assertThat(read.volume()).as(placed.label()).isCloseTo(volume, within(VOLUME * volume));
        isAt(read.centroid(), shift.add(MeshFormat.vector(solid.centroid())), rounding + SUMS, placed);
        isAt(read.low(), shift.add(MeshFormat.vector(box.min())), rounding, placed);
        isAt(read.high(), shift.add(MeshFormat.vector(box.max())), rounding, placed);
    }

    private static void isAt(Vector3D found, Vector3D expected, double rounding, PlacedSolid placed) {
        assertThat(found.distance(expected))
                .as("%s of '%s', where %s belongs", found, placed.label(), expected)
                .isLessThanOrEqualTo(rounding * Math.sqrt(3));
    }
}
