package org.standwright.design.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.column.FrontReach;
import org.standwright.design.kit.Envelope;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Size2;

/** Worked examples from outside the builder, each with where it was read. */
class HandbookTest {
    /**
     * Working height 889, machine table 330, casters 127, bottom 18, worktop 36: stand top 559, sides on the bottom 378.
     * Own derivation from the usual height stack; the block strips of our casters are a term of their own, so the
     * example stands on a plinth of 127 instead.
     */
    @Test
    void solvesTheWorkedHeightStack() {
        var design = Designs.stand(889, new Support.Plinth(122, 75, 5), Mount.OVERLAY, List.of(bay(equal(3))));
        var machine = Draft.OfMachine.plain(
                "m",
                new Size2(300, 300),
                new Envelope(400, 400, 500, OptionalDouble.empty(), OptionalDouble.empty()),
                30,
                Reference.fixed(Reference.Kind.TABLE, 330));
        var stand = StandBuilder.build(Draft.of(design, draft -> draft.machine = machine));

        double worktopTop = stand.carcass().max().z() + 36;
        double bottom = 18;
        assertThat(worktopTop).isCloseTo(559, within(1e-9));
        assertThat(stand.carcass().size().z() - bottom).isCloseTo(378, within(1e-9));
    }

    /** Cabinet 600 wide, sides 18: opening 564, box 538.0. Source: a slide maker's help page, 12.9 to 13.2 mm a side. */
    @Test
    void leavesTheSlidesTheirSpace() {
        var design = Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3))));
        var stand = StandBuilder.build(withPlan(design, 600, 560));

        var bay = stand.bays().get(0);
        assertThat(bay.opening().width()).isCloseTo(564, within(1e-9));
        assertThat(bay.drawers().get(0).box().width()).isCloseTo(538.0, within(1e-9));
    }

    /**
     * Inside depth 550, 500 and 610 take slides of 500, 450 and 600: the longest that leaves 3 mm behind. Common
     * practice, no source. The set-back of 2 mm changes none of the three.
     */
    @ParameterizedTest
    @CsvSource({"550, 500", "500, 450", "610, 600"})
    void takesTheLongestSlideThatLeavesThreeMillimetres(double insideDepth, double slide) {
        var design = Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3))));
        double back = 6;
        var stand = StandBuilder.build(withPlan(design, 700, insideDepth + back));

        assertThat(stand.bays().get(0).drawers().get(0).slide().orElseThrow().length())
                .isEqualTo(slide);
    }

    /** Zone 700, gap 3, no gap at the ends: 3, 4 and 5 equal fronts. Own derivation, checked by adding them up. */
    @ParameterizedTest
    @CsvSource({"3, 231.333", "4, 172.75", "5, 137.6"})
    void dividesAZoneIntoEqualFronts(int fronts, double height) {
        assertThat(FrontReach.room(700, fronts, 0, 3) / fronts).isCloseTo(height, within(1e-3));
    }

    /**
     * Front height = 32 n - gap: 157, 253, 317 for n 5, 8, 10 and gap 3. Source: guides to the 32 mm system (hole pitch
     * 32 mm). A column of such fronts with their gaps fills whole pitches.
     */
    @ParameterizedTest
    @CsvSource({"5, 157", "8, 253", "10, 317"})
    void fillsWholePitchesOfThe32MillimetreSystem(int pitches, double front) {
        double gap = 3;
        int fronts = 4;
        double zone = fronts * 32 * pitches + gap;

        assertThat(FrontReach.room(zone, fronts, 2 * gap, gap) / fronts).isCloseTo(front, within(1e-9));
    }

    private static StandDesign withPlan(StandDesign d, double width, double depth) {
        return Draft.of(d, draft -> draft.plan(width, depth));
    }
}
