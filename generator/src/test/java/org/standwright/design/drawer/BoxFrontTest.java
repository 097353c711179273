package org.standwright.design.drawer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Grip;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;
import org.standwright.solid.ClosedSolids;

/** Fingers that reach through the notch of a front reach into the drawer. Distances: common practice, no source. */
class BoxFrontTest {
    static List<StandDesign> stands() {
        return List.of(
                Designs.planerStand(),
                Designs.stand(900, Designs.CASTERS, Mount.INSET, List.of(bay(equal(3)))),
                Runners.stand(Mount.OVERLAY, Runners.BAR, bay(equal(3))),
                Runners.stand(Mount.INSET, Runners.BAR, bay(equal(3))));
    }

    @ParameterizedTest
    @MethodSource("stands")
    void isNotchedDownToTheHeightOfTheFrontsNotch(StandDesign plain) {
        var stand = notched(plain, 80, 25);

        for (var name : List.of("drawer 1.2 front", "drawer 1.2 box front")) {
            var notch = notch(part(stand, name));
            assertThat(notch.min().z())
                    .isCloseTo(part(stand, "drawer 1.2 front").box().max().z() - 25, within(1e-9));
            assertThat(notch.max().z()).isCloseTo(part(stand, name).box().max().z(), within(1e-9));
            assertThat(notch.size().x()).isCloseTo(80, within(1e-9));
        }
        Clearances.check(stand.assembly());
        ClosedSolids.check(stand.assembly());
    }

    /** A finger 60 wide reaches 40 back from the front's face, its corners clear of the rounding. */
    @ParameterizedTest
    @MethodSource("stands")
    void letsFingersThroughBoth(StandDesign plain) {
        var stand = notched(plain, 80, 25);

        var front = part(stand, "drawer 1.2 front").box();
        double middle = (front.min().x() + front.max().x()) / 2;
        var finger = new Box3(
                new Vec3(middle - 30, front.min().y(), front.max().z() - 25),
                new Vec3(middle + 30, front.min().y() + 40, front.max().z()));
        var group = stand.assembly().groups().stream()
                .filter(each -> each.name().equals("drawer 1.2"))
                .findFirst()
                .orElseThrow();
        for (var part : group.parts()) {
            if (meet(part.box(), finger)) {
                var notch = notch(part);
                assertThat(notch.min().x()).isLessThanOrEqualTo(middle - 40 + 1e-9);
                assertThat(notch.max().x()).isGreaterThanOrEqualTo(middle + 40 - 1e-9);
                assertThat(notch.min().z()).isLessThanOrEqualTo(finger.min().z() + 1e-9);
            }
        }
    }

    /** At 620 of 717 the holes find no room beside the notch and move below it; at 90 they stay where they were. */
    @ParameterizedTest
    @CsvSource({"90, 60", "90, 90", "540, 90", "600, 90", "600, 110"})
    void keepsTenMillimetresOfWoodBetweenNotchAndScrews(double width, double depth) {
        var stand = notched(Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(2)))), width, depth);
        var front = part(stand, "drawer 1.2 box front").part();
        var notch = (Pocket) front.features().stream()
                .filter(Pocket.class::isInstance)
                .findFirst()
                .orElseThrow();
        var holes = front.features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .toList();

        assertThat(holes).hasSize(2).allSatisfy(hole -> {
            double below = notch.area().y0() - hole.y();
            double beside = Math.max(
                    notch.area().x0() - hole.x(), hole.x() - notch.area().x1());
            assertThat(Math.max(below, beside) - hole.diameter() / 2).isGreaterThanOrEqualTo(10 - 1e-9);
        });
        // groove from 10 to 16.15
        assertThat(notch.area().y0()).isGreaterThanOrEqualTo(31.15 - 1e-9);
    }

    @Test
    void refusesANotchThatComesNearTheGrooveAndNamesADepthThatDoesNot() {
        // three bands of drawers 84 mm high: half of a front is 42, but its box would keep less than 15
        var plain = Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(7))));
        double front =
                StandBuilder.build(plain).bays().get(0).drawers().get(3).front().height();
        double deep = Math.floor(front / 2);
        assertThatThrownBy(() -> notched(plain, 80, deep))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("groove of its bottom")
                .hasMessageContaining("mm deep.")
                .satisfies(refusal -> notched(plain, 80, figure(refusal)));
    }

    @Test
    void refusesANotchThatLeavesNoWoodBesideItInTheBox() {
        var plain = Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3))));
        assertThatThrownBy(() -> notched(plain, 650, 25))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("less than 20 mm beside it there")
                .satisfies(refusal -> notched(plain, figure(refusal), 25));
    }

    private static double figure(Throwable refusal) {
        var way = ((ImpossibleDesignException) refusal).getMessage();
        var found =
                java.util.regex.Pattern.compile("Make the notch ([0-9.]+) mm").matcher(way);
        assertThat(found.find()).isTrue();
        return Double.parseDouble(found.group(1));
    }

    private static Stand notched(StandDesign plain, double width, double depth) {
        return StandBuilder.build(Draft.of(plain, draft -> draft.grip(new Grip.Notch(width, depth))));
    }

    private static PlacedPart part(Stand stand, String label) {
        return stand.assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    /** The space of a part's notch in the assembly. */
    private static Box3 notch(PlacedPart placed) {
        var area = placed.part().features().stream()
                .filter(Pocket.class::isInstance)
                .map(feature -> ((Pocket) feature).area())
                .findFirst()
                .orElseThrow();
        return Box3.between(
                placed.placement().apply(new Vec3(area.x0(), area.y0(), 0)),
                placed.placement()
                        .apply(new Vec3(area.x1(), area.y1(), placed.part().thickness())));
    }

    private static boolean meet(Box3 a, Box3 b) {
        return a.min().x() < b.max().x() - 1e-9
                && b.min().x() < a.max().x() - 1e-9
                && a.min().y() < b.max().y() - 1e-9
                && b.min().y() < a.max().y() - 1e-9
                && a.min().z() < b.max().z() - 1e-9
                && b.min().z() < a.max().z() - 1e-9;
    }
}
