package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.standwright.check.bending.Asked.about;
import static org.standwright.check.bending.Asked.cured;
import static org.standwright.check.bending.Asked.figure;
import static org.standwright.check.bending.Asked.severity;
import static org.standwright.design.Designs.CASTERS;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Joint;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.Support;
import org.standwright.design.kit.Dowel;

class BottomSagTest {
    private static final BottomSag RULE = new BottomSag();

    /** Without a partition only its own weight: 5 w L⁴ / (384 E I), any table of beams. */
    @Test
    void sagsUnderItselfInASingleBayOfDrawers() {
        double span = 720 - 2 * 120;
        double own = 680e-9 * 18 * 554 * 9.80665;
        double stiffness = 6500.0 * 554 * 18 * 18 * 18 / 12;
        var design = Draft.of(dowelled(Designs.planerStand()), draft -> draft.bays = List.of(bay(equal(4))));

        var finding = about("bottom", RULE, design);

        assertThat(figure(finding)).isCloseTo(1.8 * 5 * own * Math.pow(span, 4) / (384 * stiffness), withPercentage(1));
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
    }

    @Test
    void holdsTheTwoBaysOfThePlanerStand() {
        assertThat(severity("bottom", RULE, dowelled(Designs.planerStand()))).isEqualTo(Severity.FINE);
    }

    @Test
    void cautionsAndStopsWhereScrewsTieItToNothing() {
        assertThat(severity("bottom", RULE, wide(880, new Joint.Screwed()))).isEqualTo(Severity.CAUTION);
        assertThat(severity("bottom", RULE, wide(1000, new Joint.Screwed()))).isEqualTo(Severity.STOP);
        assertThat(severity("bottom", RULE, dowelled(wide(1000, new Joint.Screwed()))))
                .isEqualTo(Severity.FINE);
    }

    /** With its back glued in the carcass is a box; what the bottom bears itself is said with the shelves. */
    @Test
    void leavesTheBottomOfAHousedCarcassToTheShelves() {
        assertThat(Asked.of(RULE, wide(1000, new Joint.Housed()))).isEmpty();
    }

    @Test
    void offersChangesThatEachLetItSagLess() {
        var wide = wide(1400, new Joint.Screwed());
        var finding = about("bottom", RULE, wide);

        assertThat(Asked.of(RULE, cured("plinth", finding, wide))).isEmpty();
        assertThat(Asked.of(RULE, cured("housed", finding, wide))).isEmpty();
        assertThat(finding.remedies()).hasSize(4);
        for (var remedy : List.of(finding.remedies().get(0), finding.remedies().get(2))) {
            assertThat(figure(about("bottom", RULE, cured(remedy.words(), finding, wide))))
                    .as(remedy.words())
                    .isLessThan(figure(finding));
        }
    }

    /** W L³ / (48 E I), any table of beams: 50 kg in the middle of 480 mm. */
    @Test
    void bearsTheBallastUnderItsMiddle() {
        var design = Draft.of(dowelled(Designs.planerStand()), draft -> draft.bays = List.of(bay(equal(4))));
        var loaded = Draft.of(design, draft -> draft.steady = new Steady(50, false, draft.steady.anchor()));
        double stiffness = 6500.0 * 554 * 18 * 18 * 18 / 12;
        double more = figure(about("bottom", RULE, loaded)) - figure(about("bottom", RULE, design));

        assertThat(more).isCloseTo(1.8 * 50 * 9.80665 * 480 * 480 * 480 / (48 * stiffness), withPercentage(0.1));
    }

    @Test
    void leavesABottomOnAPlinthToTheShelves() {
        var design = Draft.of(Designs.planerStand(), draft -> draft.support = new Support.Plinth(80, 60, 5));

        assertThat(Asked.of(RULE, design)).isEmpty();
    }

    /** Glued at its joints, but the back only over the edges. */
    private static StandDesign dowelled(StandDesign design) {
        return Draft.of(design, draft -> {
            var now = draft.carcass;
            var joint = new Joint.Doweled(new Dowel("dowel 8 x 30", 8, 30));
            draft.carcass = new CarcassPlan(now.sheet(), now.back(), now.housing(), now.fit(), joint);
        });
    }

    private static StandDesign wide(double width, Joint joint) {
        return Stands.plain(draft -> {
            draft.plan(width, 560);
            draft.support = CASTERS;
            draft.bays = List.of(bay(equal(3)), bay(equal(3)));
            var now = draft.carcass;
            draft.carcass = new CarcassPlan(now.sheet(), now.back(), now.housing(), now.fit(), joint);
        });
    }
}
