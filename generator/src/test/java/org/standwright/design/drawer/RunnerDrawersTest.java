package org.standwright.design.drawer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.cutlist.CutList;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;
import org.standwright.unit.Units;

class RunnerDrawersTest {
    @ParameterizedTest
    @EnumSource(Mount.class)
    void stayApartAndOpenFreely(Mount mount) {
        var stand = StandBuilder.build(
                Runners.stand(mount, Runners.BAR, bay(250, given(110), equal(3)), bay(fill(120)), bay(equal(2))));

        Clearances.check(stand.assembly());
    }

    /** Play 1 mm a side and 1.5 mm in height: shop practice, no source. */
    @ParameterizedTest
    @EnumSource(Mount.class)
    void haveOneMillimetreOfPlayASideAndOneAndAHalfInHeight(Mount mount) {
        var stand = StandBuilder.build(Runners.stand(mount, Runners.BAR, bay(equal(3))));

        var bay = stand.bays().get(0);
        for (var drawer : bay.drawers()) {
            assertThat(drawer.box().width()).isCloseTo(bay.opening().width() - 2, within(1e-9));
            assertThat(drawer.slide()).isEmpty();
            var side = box(stand, "drawer " + drawer.name() + " left side");
            assertThat(side.min().x()).isCloseTo(bay.opening().x0() + 1, within(1e-9));
            var runner = box(stand, "drawer " + drawer.name() + " left runner");
            assertThat(side.min().z()).isCloseTo(runner.max().z(), within(1e-9));
        }
        assertThat(under("drawer 1.1 left kicker", "drawer 1.1 left side", stand))
                .isCloseTo(1.5, within(1e-9));
        assertThat(under("drawer 1.1 left runner", "drawer 1.2 left side", stand))
                .isCloseTo(1.5, within(1e-9));
        assertThat(under("drawer 1.2 right runner", "drawer 1.3 right side", stand))
                .isCloseTo(1.5, within(1e-9));
    }

    @Test
    void haveAKickerOnlyWhereNoRunnerLiesAbove() {
        var stand = StandBuilder.build(Runners.stand(Mount.OVERLAY, Runners.BAR, bay(equal(3)), bay(equal(2))));

        assertThat(stand.assembly().parts().stream().map(PlacedPart::label).filter(label -> label.contains("kicker")))
                .containsExactly(
                        "drawer 1.1 left kicker",
                        "drawer 1.1 right kicker",
                        "drawer 2.1 left kicker",
                        "drawer 2.1 right kicker");
    }

    /** An inset front is flush when its box meets the stop; an overlay front meets the carcass 1 mm before that. */
    @ParameterizedTest
    @EnumSource(Mount.class)
    void stopBehindTheBox(Mount mount) {
        var stand = StandBuilder.build(Runners.stand(mount, Runners.BAR, bay(equal(2))));

        double rear = box(stand, "drawer 1.2 box back").max().y();
        var stop = box(stand, "drawer 1.2 right stop");
        assertThat(stop.min().y() - rear).isCloseTo(mount == Mount.INSET ? 0 : 1, within(1e-9));
        assertThat(stop.min().z())
                .isCloseTo(box(stand, "drawer 1.2 right runner").max().z(), within(1e-9));
        assertThat(stop.max().y())
                .isLessThanOrEqualTo(box(stand, "drawer 1.2 right runner").max().y());
        assertThat(box(stand, "drawer 1.2 front").min().y()).isCloseTo(mount == Mount.INSET ? 0 : -19.5, within(1e-9));
    }

    @Test
    void travelThreeQuartersOfTheirBox() {
        var stand = StandBuilder.build(Runners.stand(Mount.OVERLAY, Runners.BAR, bay(equal(2))));

        double depth = stand.bays().get(0).drawers().get(0).box().depth();
        assertThat(stand.assembly().groups().stream().filter(group -> group.moves()))
                .hasSize(2)
                .allSatisfy(group -> assertThat(group.travel()).isEqualTo(new Vec3(0, -0.75 * depth, 0)));
    }

    @Test
    void findAPilotInTheUprightBehindEveryScrew() {
        var stand = StandBuilder.build(Runners.stand(Mount.INSET, Runners.BAR, bay(300, equal(3)), bay(equal(2))));

        var screws = new ArrayList<Vec3>();
        var pilots = new ArrayList<Vec3>();
        for (var placed : stand.assembly().parts()) {
            placed.part().features().forEach(feature -> feature.accept(new Collecting(placed, screws, pilots)));
        }
        // two rows: a kicker and the runners, a pair of each, three screws in each
        assertThat(screws).hasSize((4 + 3) * 2 * 3);
        assertThat(pilots).hasSameSizeAs(screws);
        assertThat(screws)
                .allSatisfy(screw -> assertThat(pilots)
                        .anySatisfy(pilot -> assertThat(distance(pilot, screw)).isLessThan(1e-9)));
    }

    @Test
    void cutLeftAndRightRunnersAsOnePiece() {
        var stand = StandBuilder.build(Runners.stand(Mount.OVERLAY, Runners.BAR, bay(equal(3))));

        assertThat(CutList.of(stand.assembly(), Units.MM).lines().stream()
                        .filter(line -> line.part().material().isBar())
                        .map(line -> line.part().name() + " " + line.count() + " "
                                + line.part().length()))
                .containsExactly("kicker 2 551.0", "runner 6 551.0", "stop 6 25.0");
    }

    @Test
    void refuseABarThatDoesNotReachUnderTheBoxAndNameOneThatDoes() {
        refused(
                Runners.stand(Mount.OVERLAY, Runners.bar(12, 20), bay(equal(2))),
                "/drawers/hang/bar",
                "Use a bar 13 mm wide or more.");
        StandBuilder.build(Runners.stand(Mount.OVERLAY, Runners.bar(13, 20), bay(equal(2))));
    }

    @Test
    void refuseABarThinnerThanItsScrewsAsk() {
        refused(
                Runners.stand(Mount.OVERLAY, Runners.bar(30, 10), bay(equal(2))),
                "/drawers/hang/bar",
                "Use a bar 11 mm thick or more.");
        StandBuilder.build(Runners.stand(Mount.OVERLAY, Runners.bar(30, 11), bay(equal(2))));
    }

    @Test
    void refuseABarWiderThanTheScrewsAreLong() {
        refused(
                Runners.stand(Mount.OVERLAY, Runners.bar(45, 20), bay(equal(2))),
                "/drawers/hang/bar",
                "Use a bar 42 mm wide or less, or longer screws.");
        StandBuilder.build(Runners.stand(Mount.OVERLAY, Runners.bar(42, 20), bay(equal(2))));
    }

    @Test
    void refuseAPlanTooShallowForThem() {
        var design = Runners.stand(Mount.OVERLAY, Runners.BAR, bay(equal(2)));

        refused(Draft.of(design, draft -> draft.plan(720, 120)), "/plan/depth", " deep.");
    }

    private static void refused(StandDesign design, String field, String way) {
        assertThatThrownBy(() -> StandBuilder.build(design))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refusal -> assertThat(refusal.field()).isEqualTo(field))
                .hasMessageContaining(way);
    }

    /** From the top of a part up to what lies above it. */
    private static double under(String above, String part, Stand stand) {
        return box(stand, above).min().z() - box(stand, part).max().z();
    }

    private static Box3 box(Stand stand, String label) {
        return stand.assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .findFirst()
                .orElseThrow()
                .box();
    }

    private static double distance(Vec3 a, Vec3 b) {
        var d = a.minus(b);
        return Math.sqrt(d.x() * d.x() + d.y() * d.y() + d.z() * d.z());
    }

    /** Where runner screws leave their bars, and where pilots start in the uprights. */
    private record Collecting(PlacedPart placed, List<Vec3> screws, List<Vec3> pilots) implements FeatureVisitor<Void> {
        @Override
        public Void channel(Channel channel) {
            return null;
        }

        @Override
        public Void pocket(Pocket pocket) {
            return null;
        }

        @Override
        public Void bevel(Bevel bevel) {
            return null;
        }

        @Override
        public Void contour(Contour contour) {
            return null;
        }

        @Override
        public Void hole(Hole hole) {
            if (hole.purpose().endsWith("er pilot")) {
                double z = hole.face() == Face.BENCH ? 0 : placed.part().thickness();
                pilots.add(placed.placement().apply(new Vec3(hole.x(), hole.y(), z)));
            }
            return null;
        }

        @Override
        public Void edgeHole(EdgeHole hole) {
            double out = hole.edge().isFar() ? 0 : placed.part().width();
            screws.add(placed.placement().apply(new Vec3(hole.along(), out, hole.z())));
            return null;
        }
    }
}
