package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.part.EdgeHole;
import org.standwright.part.Part;

/** The boards that builders are measured by are what their tables say they are. */
class SamplePartsTest {
    static List<Part> measured() {
        return SampleParts.measured();
    }

    @Test
    void haveTheFeaturesThatTheyAreMeasuredBy() {
        assertThat(SampleParts.measured())
                .extracting(part -> part.name() + " " + part.features().size())
                .containsExactly("shelves 26", "pin side 60", "back 4", "mixed 39", "cleat 13", "crowded 200");
    }

    @Test
    void makeACabinetOf60PartsWith488Features() {
        var parts = SampleCabinet.parts(0);

        assertThat(parts).hasSize(60);
        assertThat(parts.stream().mapToInt(part -> part.features().size()).sum())
                .isEqualTo(488);
    }

    @Test
    void areNoTwoTheSameWorkOnAPileOf500() {
        assertThat(SampleCabinet.pile(500).parts())
                .extracting(placed -> Workpiece.of(placed.part(), Fineness.FILE))
                .hasSize(500)
                .doesNotHaveDuplicates();
    }

    @Test
    void keepTheHolesInTheEdgesOfACabinetOffEverythingElse() {
        assertThat(SampleCabinet.parts(0)).allSatisfy(SamplePartsTest::keepsEdgeHolesOffEverythingElse);
    }

    @ParameterizedTest
    @MethodSource("measured")
    void keepHolesInEdgesOffEverythingElse(Part part) {
        keepsEdgeHolesOffEverythingElse(part);
    }

    private static void keepsEdgeHolesOffEverythingElse(Part part) {
        var extents = part.features().stream()
                .map(feature -> feature.accept(
                        new Tools(part, Workpiece.of(part, Fineness.FILE).board(), Fineness.FILE)))
                .map(cut -> cut.orElseThrow().extent())
                .toList();
        for (int i = 0; i < extents.size(); i++) {
            for (int j = 0; j < extents.size(); j++) {
                if (i != j && part.features().get(i) instanceof EdgeHole) {
                    assertThat(extents.get(i).touches(extents.get(j)))
                            .as(
                                    "%s and %s",
                                    part.features().get(i), part.features().get(j))
                            .isFalse();
                }
            }
        }
    }
}
