package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.LoadedStand;
import org.standwright.check.Stands;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Hung;
import org.standwright.design.Mount;
import org.standwright.design.Support;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.Mixed;
import org.standwright.design.kit.Hinge;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;

class HardwareThicknessTest {
    private static final HardwareThickness RULE = new HardwareThickness();

    @Test
    void acceptsCupsThatLeaveEnough() {
        var hung = Mixed.stand(Mount.OVERLAY, Designs.bay(Mixed.door(Hung.LEFT)), Designs.bay(Designs.equal(3)));

        assertThat(Asked.of(RULE, hung))
                .containsExactly("FINE door 1.1: Its bore for 'hinge cup' is 12 mm deep in a board of 18 mm.");
    }

    @Test
    void stopsACupThatLeavesTooLittle() {
        assertThat(Asked.of(RULE, side(Hole.blind(Face.BENCH, 300, 200, 35, 15.5, "hinge cup"))))
                .containsExactly("STOP left side: Its bore for 'hinge cup' is 15.5 mm deep in a board of 18 mm.");
    }

    @Test
    void stopsADowelThatLeavesTooLittleBehindIt() {
        assertThat(Asked.of(RULE, side(Hole.blind(Face.BENCH, 300, 200, 8, 13, "dowel"))))
                .containsExactly("STOP left side: Its bore for 'dowel' is 13 mm deep in a board of 18 mm.");
    }

    @Test
    void stopsABoreTooWideForItsEdge() {
        assertThat(Asked.of(RULE, side(new EdgeHole(Edge.Y0, 300, 9, 12.5, 30, "connector"))))
                .containsExactly("STOP left side: Its bore for 'connector' is 12.5 mm wide in an edge of 18 mm.");
    }

    @Test
    void stopsALeafWiderThanTheDoorIsThick() {
        var butt = Mixed.stand(Mount.INSET, Designs.bay(butt()), Designs.bay(Designs.equal(3)));

        assertThat(Asked.of(RULE, Altered.bays(butt, HardwareThicknessTest::wideLeaf)))
                .last()
                .isEqualTo("STOP door 1.1: The leaf of butt 70 is 20 mm wide on a door of 18 mm.");
    }

    private static LoadedStand side(Feature feature) {
        return Altered.part(
                Stands.plain(draft -> draft.support = new Support.None(3)), "left side", part -> part.with(feature));
    }

    private static Content butt() {
        return new Content.Door(OptionalDouble.empty(), Mixed.BUTT, Hung.LEFT, Optional.empty());
    }

    private static BayLayout wideLeaf(BayLayout bay) {
        if (bay.doors().isEmpty()) {
            return bay;
        }
        var closed = (SectionLayout.Closed) bay.sections().get(0);
        var door = closed.doors().get(0);
        var hinge = new Hinge.Butt("butt 70", 70, 20, 1.5, 3);
        var wide = new DoorLayout(door.name(), door.front(), door.hung(), hinge, door.hinges());
        return new BayLayout(
                bay.name(),
                bay.opening(),
                List.of(new SectionLayout.Closed(closed.opening(), List.of(wide), closed.shelves(), closed.kind())));
    }
}
