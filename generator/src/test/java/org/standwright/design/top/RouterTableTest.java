package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Cutout;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.PlateOpening;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.kit.Reference;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.solid.ClosedSolids;

/** A router table: a plate in the worktop, room under it for the router, drawers below and beside. */
class RouterTableTest {
    private static final Content ROUTER = new Content.Clear(OptionalDouble.of(350), "router", OptionalDouble.of(60));

    @Test
    void hangsTheRouterInABayThatBeginsWithRoomForIt() {
        for (var layout : Layout.values()) {
            var stand = StandBuilder.build(table(layout, 610, bay(equal(4)), bay(440, ROUTER, equal(2))));

            assertThat(Bored.pockets(stand, "sub-top", "opening under router plate"))
                    .hasSize(1);
            assertThat(stand.machine()).isEmpty();
            Clearances.check(stand.assembly());
            ClosedSolids.check(stand.assembly());
        }
    }

    @Test
    void refusesAPlateOverAPartitionOfABayWithinABay() {
        var halves = new Content.Divided(OptionalDouble.of(350), List.of(bay(open()), bay(open())));
        var refusal = Refusals.of(table(Layout.AS_WRITTEN, 610, bay(equal(4)), bay(440, halves, equal(2))));

        assertThat(refusal.field()).isEqualTo("/worktop/plate");
        assertThat(refusal).hasMessageContaining("meets the partition 2a");
    }

    @Test
    void screwsTheWorktopClearOfThePartitionsOfBaysWithinBays() {
        var halves = new Content.Divided(OptionalDouble.of(350), List.of(bay(200, open()), bay(open())));
        var stand = StandBuilder.build(Draft.of(
                table(Layout.AS_WRITTEN, 610, bay(halves, equal(2))),
                draft -> draft.worktop =
                        new Worktop(Designs.BOARD_18, 2, new Worktop.Overhang(20, 0, 0, 0), Optional.empty())));

        var across = Bored.holes(stand, "sub-top", "worktop screw").stream()
                .map(hole -> Double.parseDouble(hole.split(" ")[0]))
                .distinct()
                .toList();
        assertThat(across).containsExactly(58.0, 178.0, 276.0, 559.0, 842.0);
        Clearances.check(stand.assembly());
    }

    private static Content open() {
        return new Content.Open(OptionalDouble.empty(), Optional.empty());
    }

    private static StandDesign table(Layout layout, double x, Bay... bays) {
        return TopDesigns.press(draft -> {
            draft.machine = Draft.OfMachine.of(
                    TopDesigns.PRESS, machine -> machine.reference = Reference.fixed(Reference.Kind.WORKTOP, 0));
            draft.plan(900, 500);
            draft.layout = layout;
            draft.bays = List.of(bays);
            draft.cutouts = List.of(new Cutout.Round("dust hose", Cutout.In.BACK, x, 600, 66));
            draft.worktop = new Worktop(
                    Designs.BOARD_18,
                    2,
                    new Worktop.Overhang(20, 0, 0, 0),
                    Optional.of(new PlateOpening("router plate", x, 270, 300, 230, 9.5, 12, 0.6, 14)));
        });
    }
}
