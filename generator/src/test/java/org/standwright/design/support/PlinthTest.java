package org.standwright.design.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Joint;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;

class PlinthTest {
    @Test
    void keepsItsOwnRabbetsUnderAButtedCarcass() {
        var housed = design(new Support.Plinth(90, 75, 5));
        var butted = Draft.of(
                housed,
                draft -> draft.carcass = new CarcassPlan(
                        draft.carcass.sheet(),
                        draft.carcass.back(),
                        draft.carcass.housing(),
                        draft.carcass.fit(),
                        new Joint.Screwed()));

        assertThat(group(butted).parts()).isEqualTo(group(housed).parts());
        assertThat(group(butted).parts())
                .filteredOn(part -> part.label().equals("plinth front"))
                .singleElement()
                .satisfies(part -> assertThat(part.part().length()).isEqualTo(720 - 2 * (18 - 6)));
    }

    @Test
    void standsOnPadsBehindTheToeSpace() {
        var stand = StandBuilder.build(design(new Support.Plinth(90, 75, 5)));

        Clearances.check(stand.assembly());
        assertThat(stand.assembly().blocks())
                .filteredOn(block -> block.kind() == Block.Kind.PAD)
                .hasSize(6)
                .allSatisfy(pad -> {
                    assertThat(pad.box().min().y()).isGreaterThanOrEqualTo(75);
                    assertThat(pad.box().max().z()).isEqualTo(5);
                });
    }

    /** Behind the toes 100 mm of frame and 6 mm of back. */
    @Test
    void refusesAToeSpaceThatLeavesNoFrameAndNamesOneThatDoes() {
        assertThatThrownBy(() -> StandBuilder.build(design(new Support.Plinth(90, 500, 5))))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refused -> assertThat(refused.field()).isEqualTo("/support/toeSpace"))
                .hasMessageContaining("A toe space of 500 mm leaves too little of a plan 560 mm deep")
                .hasMessageContaining("Make it 454 mm or less. Or make the plan 606 mm deep.");
        Clearances.check(
                StandBuilder.build(design(new Support.Plinth(90, 454, 5))).assembly());
        StandBuilder.build(Draft.of(design(new Support.Plinth(90, 500, 5)), draft -> draft.plan(720, 606)));
    }

    private static Group group(StandDesign design) {
        var frame = new Frame(design, PlanSize.of(design), 95, 500, List.of(400.0, 266.0));
        return SupportPlan.of(design).group(frame);
    }

    private static StandDesign design(Support support) {
        return Designs.stand(900, support, Mount.OVERLAY, List.of(bay(400, equal(3)), bay(equal(3))));
    }
}
