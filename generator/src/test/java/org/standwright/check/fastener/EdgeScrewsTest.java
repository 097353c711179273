package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Joint;
import org.standwright.design.StandDesign;

class EdgeScrewsTest {
    private static final EdgeScrews RULE = new EdgeScrews();

    @Test
    void saysThatTheBacksScrewsCarryNothing() {
        assertThat(Asked.of(RULE, joined(new Joint.Housed())))
                .containsExactly("NOTE back: The back's screws go into panel edges and are not rated: the glued "
                        + "rabbets carry, the screws only hold while the glue sets.");
    }

    @Test
    void saysThatNothingMayHangOnScrewedJoints() {
        assertThat(Asked.of(RULE, joined(new Joint.Screwed())))
                .containsExactly("NOTE carcass: What joins the panels goes into their edges and is not rated. Nothing "
                        + "may hang on it: the panels stand on each other, and the back, glued on, keeps them square.");
    }

    @Test
    void stopsABottomThatHangsOnScrewsInItsEdges() {
        assertThat(Asked.of(RULE, Altered.without(joined(new Joint.Screwed()), "support")))
                .last()
                .isEqualTo(
                        "STOP bottom: Nothing stands under it: it would hang with all that lies on it on screws into "
                                + "its own edges.");
        assertThat(Asked.of(RULE, Altered.without(joined(new Joint.Housed()), "support")))
                .hasSize(1);
    }

    @Test
    void offersHousedPanelsInstead() {
        var design = joined(new Joint.Screwed());
        var hanging = RULE.check(Altered.without(design, "support")).get(1);
        var cured = Stands.changed(design, hanging.remedies().get(0));

        assertThat(RULE.check(Altered.without(cured, "support"))).noneMatch(finding -> finding.isStop());
    }

    private static StandDesign joined(Joint joint) {
        return Stands.plain(draft -> draft.carcass = new CarcassPlan(
                draft.carcass.sheet(), draft.carcass.back(), draft.carcass.housing(), draft.carcass.fit(), joint));
    }
}
