package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.standwright.Presets;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;

/** What a maker of some complete stands would miss on paper. Common practice, no source. */
class PresetPacketTest {
    @Test
    void aSawOnShimsIsSetOnThem() {
        assertThat(words("Table saw stand"))
                .contains("Set it on shims", "of 3/8 in (9.5 mm), one round each bolt")
                .contains("lock nuts on from below, through the empty openings");
    }

    /** The stop's front end: box of 21 in and play behind it, as the assembly has it. */
    @Test
    void runnersHaveTheirStopsPlaced() {
        assertThat(words("Mitre saw stand")).containsPattern("The front end of each stop lies 2[01][ 0-9/]* in");
    }

    @Test
    void buttHingesLieInTheGapAndDoorsOnThemGetACatch() {
        assertThat(words("Mitre saw stand"))
                .contains("Both lie in the gap, one on the upright's inner face")
                .contains("Fix the magnetic catches so that they stop the doors on butt hinges flush");
        assertThat(words("Router table stand")).doesNotContain("magnetic catch");
    }

    /** The mitre saw's top drawers leave no room for a drill that points up; the router's bays do. */
    @Test
    void aLowOpeningUnderTheTopNeedsARightAngleHead() {
        assertThat(words("Mitre saw stand")).contains("bore and drive with a right-angle head");
        assertThat(words("Router table stand")).doesNotContain("right-angle head");
    }

    @Test
    void aPlateIsLevelledInARabbetDeeperThanItself() {
        assertThat(words("Router table stand"))
                .containsPattern("deeper than the plate by [^:]*1 mm\\)?: the levelling screws bring it flush");
    }

    /** Places count from trimmed edges, so what is bored in an oversize layer is bored after the trim. */
    @Test
    void anOversizeLayerIsTrimmedBeforeItIsBoredAndABandedOneIsNotTrimmed() {
        assertThat(words("Planer stand"))
                .containsPattern("Trim it flush when the glue has set.*made after the trim.*from the trimmed edges");
        assertThat(words("Lathe stand")).doesNotContain("oversize upper layer").doesNotContain("Trim it flush");
    }

    @Test
    void whatWouldSaveASheetIsPrintedWhereTheDesignSaysWhatMayChange() {
        assertThat(words("Table saw stand"))
                .contains("What would save a sheet", "The smallest change first")
                .containsPattern("2 [0-9/]+ in less deep: the plan 23 [0-9/]+ in deep 6 to [45]");
        assertThat(words("Planer stand")).doesNotContain("What would save a sheet");
    }

    private static String words(String stand) {
        var design = Presets.stands()
                .filter(preset -> preset.name().equals(stand))
                .findFirst()
                .orElseThrow();
        return Jobs.packet(design).stream()
                .flatMap(page -> Lettering.of(page.shapes(), TextMeasure.shipped()).texts().stream())
                .map(Lettering.Placed::words)
                .collect(Collectors.joining(" "));
    }
}
