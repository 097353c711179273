package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.part.Part;

class SolidsTest {
    static Collection<Part> samples() {
        return SampleParts.all().values();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void closesWithTheVolumeThatTheFeaturesLeave(Part part) {
        var solid = Solids.of(part);
        var read = ReadBack.of(solid);

        assertThat(read.openEdges()).isZero();
        assertThat(read.openArea()).isLessThan(1e-6);
        double expected = LayeredVolume.of(part);
        assertThat(read.volume()).isCloseTo(expected, within(1 + 1e-6 * expected));
    }

    @Test
    void aPlainBoardHasEightCornersTwelveTrianglesAndEulersNumber() {
        var solid = Solids.of(SampleParts.plain());

        assertThat(solid.vertexCount()).isEqualTo(8);
        assertThat(solid.triangleCount()).isEqualTo(12);
        // V - E + F = 8 - 18 + 12 (Euler)
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
        assertThat(solid.volume()).isCloseTo(600.0 * 400 * 18, within(1e-6));
    }
}
