package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.part.Part;

/** Closed solids of the right volume for boards that nobody has thought of. */
class RandomSolidsTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));

    static LongStream seeds() {
        return LongStream.range(0, FULL ? 900 : 71);
    }

    static LongStream someSeeds() {
        return LongStream.range(0, FULL ? 300 : 24);
    }

    static LongStream fewSeeds() {
        return LongStream.range(0, FULL ? 100 : 4);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void closesWhenFeaturesLieAnywhere(long seed) {
        closesWithTheVolumeThatTheFeaturesLeave(seed, RandomPart.anywhere(seed, 2, 13));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void closesWhenFeaturesAreFlushTangentAndTouching(long seed) {
        closesWithTheVolumeThatTheFeaturesLeave(seed, RandomPart.onLattice(seed, 2, 13));
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void closesWhenFeaturesCrowdAnywhere(long seed) {
        closesWithTheVolumeThatTheFeaturesLeave(seed, RandomPart.anywhere(seed, 20, 30));
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void closesWhenFeaturesCrowdOnALattice(long seed) {
        closesWithTheVolumeThatTheFeaturesLeave(seed, RandomPart.onLattice(seed, 20, 30));
    }

    @ParameterizedTest
    @MethodSource("someSeeds")
    void closesWhenHolesIntoEdgesMeet(long seed) {
        closesWithTheVolumeThatTheFeaturesLeave(seed, RandomPart.bored(seed));
    }

    private static void closesWithTheVolumeThatTheFeaturesLeave(long seed, Part part) {
        double expected = LayeredVolume.of(part);
        assumeThat(expected).as("something is left").isGreaterThan(1);
        var solid = Solids.of(part);
        var read = ReadBack.of(solid);

        assertThat(read.openEdges()).as("open edges, seed %d, %s", seed, part).isZero();
        assertThat(DirectedEdges.occurringMoreThanOnce(solid))
                .as("edges of more than two triangles, seed %d, %s", seed, part)
                .isZero();
        assertThat(read.openArea()).as("open area, seed %d, %s", seed, part).isLessThan(1e-6);
        assertThat(read.volume())
                .as("volume, seed %d, %s", seed, part)
                .isCloseTo(expected, within(1 + 1e-6 * expected))
                .isCloseTo(solid.volume(), within(1e-9 * expected));
    }
}
