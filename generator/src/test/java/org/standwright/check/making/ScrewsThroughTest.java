package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.assembly.Hardware;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.part.Face;
import org.standwright.part.Hole;

class ScrewsThroughTest {
    private static final ScrewsThrough RULE = new ScrewsThrough();

    @Test
    void acceptsWhatTheBuilderChooses() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {})))
                .containsExactly(
                        "FINE left side: The bore that leaves least behind it, for 'slide pilot', is 14.8 mm "
                                + "deep in 18 mm.",
                        "FINE slides on sides: The screws that come nearest to the far face are 16 mm long.");
    }

    @Test
    void warnsOfABoreThatNearlyComesThrough() {
        var deep = Altered.part(
                Stands.plain(draft -> {}),
                "left side",
                part -> part.with(Hole.blind(Face.BENCH, 300, 200, 2.5, 17, "hook pilot")));

        assertThat(Asked.of(RULE, deep))
                .first()
                .isEqualTo("CAUTION left side: The bore that leaves least behind it, for 'hook pilot', is 17 mm "
                        + "deep in 18 mm.");
        assertThat(Asked.limit(RULE, deep)).isEqualTo("at most 16 mm, a stop above 18 mm");
    }

    /** 18 mm of sub-top and twice 18 of worktop: 54. */
    @Test
    void warnsOfAScrewThatEndsRightUnderTheTop() {
        var near =
                Altered.hardware(Stands.plain(draft -> {}), new Hardware("screw 4 x 50 mm", 9, "worktop, from inside"));

        assertThat(Asked.of(RULE, near))
                .last()
                .isEqualTo("CAUTION worktop, from inside: The screws that come nearest to the far face are 50 "
                        + "mm long.");
    }

    @Test
    void stopsAScrewThatComesOut() {
        var out = Altered.hardware(
                Stands.plain(draft -> {}), new Hardware("screw 4 x 20 mm", 8, "hinge plates on uprights"));

        assertThat(Asked.of(RULE, out))
                .last()
                .isEqualTo("STOP hinge plates on uprights: The screws that come nearest to the far face are 20 "
                        + "mm long.");
    }

    /** Half of 18 mm less half of what stays between the tips, and 1.2 mm of the slide's metal. */
    @Test
    void keepsScrewsOfASharedPartitionInTheirHalves() {
        var shared = Altered.hardware(
                Stands.plain(draft -> {}), new Hardware("slide screw 4 x 10 mm", 8, "slides on partitions"));

        assertThat(Asked.of(RULE, shared))
                .last()
                .isEqualTo("CAUTION slides on partitions: The screws that come nearest to the far face are 10 "
                        + "mm long.");
    }
}
