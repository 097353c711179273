package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Hung;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.Mixed;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;

class HingePullTest {
    private static final HingePull RULE = new HingePull();

    @Test
    void holdsAPlywoodDoor() {
        assertThat(Asked.of(RULE, concealed()))
                .containsExactly("FINE door 1.1: The door draws with 5.8 N on each screw of its top hinge in the "
                        + "upright, 16 mm deep in its face. Less than 21 mm of thread is not rated.");
    }

    @Test
    void warnsOfADoorOfLead() {
        assertThat(Asked.of(RULE, Draft.of(concealed(), draft -> draft.front(lead()))))
                .containsExactly("CAUTION door 1.1: The door draws with 508.7 N on each screw of its top hinge in the "
                        + "upright, 16 mm deep in its face. Less than 21 mm of thread is not rated.");
    }

    @Test
    void rebukesNoLightDoorForScrewsInItsEdge() {
        var butt = Mixed.stand(Mount.INSET, Designs.bay(butt()), Designs.bay(Designs.equal(3)));

        assertThat(Asked.of(RULE, butt))
                .containsExactly(
                        "FINE door 1.1: The door draws with 3.4 N on each screw of its top hinge in the "
                                + "upright, 14.5 mm deep in its face. Less than 21 mm of thread is not rated.",
                        "FINE door 1.1: The top hinge draws with 3.4 N on each of its screws in the door's "
                                + "edge, where screws are not rated.");
    }

    @Test
    void saysOfAHeavyDoorThatScrewsInItsEdgeAreNotRated() {
        var butt = Mixed.stand(Mount.INSET, Designs.bay(butt()), Designs.bay(Designs.equal(3)));

        assertThat(Asked.of(RULE, Draft.of(butt, draft -> draft.front(lead()))))
                .last()
                .asString()
                .startsWith("NOTE door 1.1: The top hinge draws with ")
                .endsWith(" on each of its screws in the door's edge, where screws are not rated.");
    }

    @Test
    void stopsADoorOnHingesOfOneHeight() {
        var level = Altered.bays(concealed(), bay -> bay.doors().isEmpty() ? bay : level(bay));

        assertThat(Asked.of(RULE, level))
                .containsExactly("STOP door 1.1: Its hinges sit at one height: it turns about them and sags.");
    }

    private static BayLayout level(BayLayout bay) {
        var closed = (SectionLayout.Closed) bay.sections().get(0);
        var door = closed.doors().get(0);
        var level = new DoorLayout(door.name(), door.front(), door.hung(), door.hinge(), List.of(100.0, 100.0));
        return new BayLayout(
                bay.name(),
                bay.opening(),
                List.of(new SectionLayout.Closed(closed.opening(), List.of(level), closed.shelves(), closed.kind())));
    }

    private static StandDesign concealed() {
        return Mixed.stand(Mount.OVERLAY, Designs.bay(Mixed.door(Hung.LEFT)), Designs.bay(Designs.equal(3)));
    }

    private static SheetGood lead() {
        var board = Designs.BOARD_18;
        var heavy = new Material("lead", 18, 60_000, board.material().grain());
        return new SheetGood(heavy, board.length(), board.width(), board.nominal(), board.price());
    }

    private static Content butt() {
        return new Content.Door(OptionalDouble.empty(), Mixed.BUTT, Hung.LEFT, Optional.empty());
    }
}
