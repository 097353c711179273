package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.Cutout;
import org.standwright.design.Draft;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Rect;

class TopScrewsTest {
    /** Opening 564 wide and 494 deep: 40 from its walls, two steps of 242 across and two of 207 back. */
    @Test
    void standEvenlyBesideTheWalls() {
        var stand = StandBuilder.build(design());

        assertThat(Bored.holes(stand, "sub-top", "worktop screw"))
                .containsExactly(
                        "58.0 40.0 4.5",
                        "58.0 247.0 4.5",
                        "58.0 454.0 4.5",
                        "300.0 40.0 4.5",
                        "300.0 247.0 4.5",
                        "300.0 454.0 4.5",
                        "542.0 40.0 4.5",
                        "542.0 247.0 4.5",
                        "542.0 454.0 4.5");
    }

    /** A bay within the bay ends at 281, 18 before the next: no screw comes within 40 of that partition. */
    @Test
    void standBesideThePartitionsOfBaysWithinABay() {
        var opening = new Rect(18, 94, 582, 900);
        var halves = List.of(half("1a", new Rect(18, 500, 281, 900)), half("1b", new Rect(299, 500, 582, 900)));
        var bay = new BayLayout("1", opening, List.of(new SectionLayout.Divided(opening, halves)));
        var design = design();
        var frame = new Frame(design, PlanSize.of(design), 76, 842, List.of(564.0));

        assertThat(new TopScrews(frame, List.of(bay)).places())
                .extracting(hole -> hole.x())
                .containsOnly(58.0, 241.0, 339.0, 542.0);
    }

    @Test
    void refuseCutOutsThatLeaveThemNoPlace() {
        var refusal = Refusals.of(Draft.of(
                design(),
                draft -> draft.cutouts =
                        List.of(new Cutout.Rectangular("bin", Cutout.In.WORKTOP, 300, 250, 540, 440, 20))));

        assertThat(refusal.field()).isEqualTo("/cutouts");
        assertThat(refusal).hasMessageContaining("leaves room for 0 of the 4 screws");
    }

    private static BayLayout half(String name, Rect opening) {
        return new BayLayout(name, opening, List.of(new SectionLayout.Clear(opening, "motor")));
    }

    private static StandDesign design() {
        return TopDesigns.press(draft -> {
            draft.bays = List.of(bay(equal(3)));
            draft.machine = Draft.OfMachine.of(TopDesigns.PRESS, machine -> machine.mounting = Optional.empty());
        });
    }
}
