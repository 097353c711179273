package org.standwright.design.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.column.Mixed.divided;
import static org.standwright.design.column.Mixed.door;
import static org.standwright.design.column.Mixed.open;
import static org.standwright.design.column.Mixed.stand;

import org.junit.jupiter.api.Test;
import org.standwright.design.Bay;
import org.standwright.design.Hung;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.stand.StandBuilder;

/** Widths of bays side by side in a carcass of 720 mm, panels 18 mm: its one opening is 684 mm wide. */
class BayWidthsTest {
    @Test
    void sharesTheWidthOfADividedPartAsThatOfTheCarcass() {
        var stand = StandBuilder.build(stand(
                Mount.OVERLAY,
                bay(divided(bay(200, open()), bay(open()), bay(equal(2))), divided(bay(open()), bay(open())))));
        var sections = stand.bays().get(0).sections();
        var upper = ((SectionLayout.Divided) sections.get(0)).bays();
        var lower = ((SectionLayout.Divided) sections.get(1)).bays();

        // 684 - 2 x 18 - 200 = 448 for two
        assertThat(upper).extracting(bay -> bay.opening().width()).containsExactly(200.0, 224.0, 224.0);
        assertThat(lower).extracting(bay -> bay.opening().width()).containsExactly(333.0, 333.0);
        assertThat(upper).extracting(BayLayout::name).containsExactly("1a", "1b", "1c");
        assertThat(lower).extracting(BayLayout::name).containsExactly("1d", "1e");
        assertThat(upper.get(2).drawers()).extracting(drawer -> drawer.name()).containsExactly("1c.1", "1c.2");
    }

    @Test
    void pointsAtTheNestedWidthThatDoesNotFit() {
        var refused = refusal(bay(open(), divided(bay(600, open()), bay(door(Hung.LEFT)))));

        assertThat(refused.field()).isEqualTo("/bays/0/contents/1/bays/0/width");
        // 684 - 18 - 120 for the door
        assertThat(refused).hasMessageEndingWith("Make it 546 mm wide.");
        StandBuilder.build(stand(Mount.OVERLAY, bay(open(), divided(bay(546, open()), bay(door(Hung.LEFT))))));
    }

    @Test
    void asksForOneWidthToBeLeftOutWhereGivenOnesDoNotClose() {
        var refused = refusal(bay(divided(bay(300, open()), bay(300, open()))));

        assertThat(refused.field()).isEqualTo("/bays/0/contents/0/bays/1/width");
        assertThat(refused)
                .hasMessage("Bay 1b with an opening of 300 mm leaves 66 mm of the part that it stands in, "
                        + "which is 684 mm wide. Make it 366 mm wide, or leave its width out: it takes what is left.");
    }

    @Test
    void asksForTheWidthThatTheBaysWithinABayTake() {
        var refused = refusal(bay(300, divided(bay(equal(1)), bay(equal(1)), bay(equal(1)))), bay(open()));

        assertThat(refused.field()).isEqualTo("/bays/0/width");
        // a drawer takes 60 + 24 + 26 = 110: 3 x 110 + 2 x 18
        assertThat(refused).hasMessageEndingWith("Make it 366 mm wide.");
    }

    private static ImpossibleDesignException refusal(Bay... bays) {
        return catchThrowableOfType(
                ImpossibleDesignException.class, () -> StandBuilder.build(stand(Mount.OVERLAY, bays)));
    }
}
