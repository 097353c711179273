package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.Presets;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;

/** What of a worktop's features is seen from above. */
class PanelHoleTest {
    private static final Stand STAND =
            StandBuilder.build(Presets.stands().findFirst().orElseThrow());
    private static final PlacedPart TOP = STAND.assembly().parts().stream()
            .max(Comparator.comparingDouble(part -> part.box().max().z()))
            .orElseThrow();

    @Test
    void aCountersunkHoleIsAsWideAsItsMouth() {
        var holes = seen(Hole.through(100, 80, 5, "screw").with(new Recess.Countersink(10, 90)));

        assertThat(holes).extracting(hole -> 2 * hole.radius()).containsExactly(10.0);
        assertThat(holes.get(0).isRound()).isTrue();
    }

    @Test
    void aHoleSunkFromBelowIsAsWideAsItsBore() {
        var above = Hole.through(100, 80, 5, "screw");
        var below = new Hole(Face.BENCH, 100, 80, 5, OptionalDouble.empty(), above.recess(), "screw");

        assertThat(seen(below.with(new Recess.Counterbore(26, 6))))
                .extracting(hole -> 2 * hole.radius())
                .containsExactly(5.0);
    }

    @Test
    void aPocketOfAnyOutlineKeepsItsCorners() {
        var wedge = new Outline(List.of(new Vec2(100, 50), new Vec2(180, 50), new Vec2(100, 110)));
        var holes = seen(new Pocket(Face.SHOW, wedge, 0, OptionalDouble.of(6), "plate"));

        assertThat(holes).hasSize(1);
        assertThat(holes.get(0).outline()).contains(wedge);
        assertThat(holes.get(0).area()).isEqualTo(new Rect(100, 50, 180, 110));
        assertThat(holes.get(0).isRound()).isFalse();
    }

    @Test
    void aRectangularPocketHasNoOutlineOfItsOwn() {
        assertThat(seen(Pocket.through(new Rect(100, 50, 160, 110), 30, "cord")))
                .allSatisfy(hole -> assertThat(hole.outline()).isEmpty())
                .allSatisfy(hole -> assertThat(hole.isRound()).isTrue());
    }

    @Test
    void edgesAndOutlinesAreNoHoles() {
        var part = TOP.part();
        var outline = new Outline(List.of(Vec2.ZERO, new Vec2(part.length(), 0), new Vec2(0, part.width())));

        assertThat(seen(new Bevel(Edge.Y0, Face.SHOW, 45, 3), new Contour(outline, "corner")))
                .isEmpty();
    }

    /** Those of the worktop when nothing else is machined into it. */
    private static List<PanelHole> seen(Feature... features) {
        var plain = TOP.part();
        var machined = Part.blank(plain.name(), plain.material(), plain.length(), plain.width())
                .with(features);
        var groups = STAND.assembly().groups().stream()
                .map(group -> new Group(
                        group.name(),
                        group.travel(),
                        group.parts().stream()
                                .map(part -> part.equals(TOP)
                                        ? new PlacedPart(part.label(), machined, part.placement())
                                        : part)
                                .toList(),
                        group.blocks()))
                .toList();
        var assembly =
                new Assembly(STAND.assembly().name(), groups, STAND.assembly().hardware());
        return PanelHole.inWorktop(
                new Stand(STAND.design(), STAND.stack(), STAND.carcass(), STAND.bays(), STAND.machine(), assembly));
    }
}
