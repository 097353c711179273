package org.standwright.design.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.door.HandMade.BUTT;
import static org.standwright.design.door.HandMade.CONCEALED;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.frame.SideBore;
import org.standwright.design.kit.Side;
import org.standwright.design.stand.Clearances;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;

class DoorMakerTest {
    @ParameterizedTest
    @EnumSource(Mount.class)
    void keepsDoorsAndTheirHingesApartFromEverything(Mount mount) {
        var design = HandMade.design(mount, CONCEALED);

        Clearances.check(new HandMade(design)
                .door(Side.LEFT, CONCEALED)
                .door(Side.RIGHT, CONCEALED)
                .assembly());
        Clearances.check(new HandMade(design)
                .door(Side.RIGHT, CONCEALED)
                .door(Side.LEFT, CONCEALED)
                .assembly());
        Clearances.check(new HandMade(design).pair(CONCEALED).pair(CONCEALED).assembly());
        Clearances.check(
                new HandMade(design).door(Side.RIGHT, CONCEALED).drawer().assembly());
    }

    @Test
    void keepsDoorsOnButtHingesApartFromEverything() {
        var design = HandMade.design(Mount.INSET, BUTT);

        Clearances.check(new HandMade(design).door(Side.LEFT, BUTT).pair(BUTT).assembly());
    }

    @ParameterizedTest
    @EnumSource(Mount.class)
    void makesOnePanelOfUprightGrainThatFillsItsFront(Mount mount) {
        var made = new HandMade(HandMade.design(mount, CONCEALED)).door(Side.LEFT, CONCEALED);

        var door = made.part("door 1.1");
        var front = made.doors().get(0).front();
        double outer = mount == Mount.INSET ? 0 : -19.5;
        assertThat(door.box())
                .isEqualTo(new Box3(
                        new Vec3(front.x0(), outer, front.y0()), new Vec3(front.x1(), outer + 18, front.y1())));
        assertThat(door.placement().along()).isEqualTo(Axis.Z_PLUS);
        assertThat(door.placement().through()).isEqualTo(Axis.Y_MINUS);
        assertThat(door.part().oversize()).isEqualTo(mount == Mount.INSET ? 1 : 0);
    }

    /** Cup of 35 mm, its centre 22.5 mm from the edge: common practice, no source. */
    @Test
    void boresTheCupsInTheInnerFaceBesideTheHinges() {
        var made = new HandMade(HandMade.design(Mount.OVERLAY, CONCEALED))
                .door(Side.LEFT, CONCEALED)
                .door(Side.RIGHT, CONCEALED);

        var left = made.doors().get(0).front();
        assertThat(holes(made.part("door 1.1"), "hinge cup"))
                .containsExactly(
                        "bench 35.0 x 12.0 at " + new Vec3(left.x0() + 22.5, -1.5, left.y0() + 100),
                        "bench 35.0 x 12.0 at " + new Vec3(left.x0() + 22.5, -1.5, left.y1() - 100));
        var right = made.doors().get(1).front();
        assertThat(holes(made.part("door 2.1"), "hinge cup"))
                .containsExactly(
                        "bench 35.0 x 12.0 at " + new Vec3(right.x1() - 22.5, -1.5, right.y0() + 100),
                        "bench 35.0 x 12.0 at " + new Vec3(right.x1() - 22.5, -1.5, right.y1() - 100));
    }

    /**
     * Plates on the line 37 mm behind the front edge, for inset fronts 37 mm and the front's thickness. Source: guides to
     * the 32 mm system.
     */
    @ParameterizedTest
    @EnumSource(Mount.class)
    void screwsThePlatesToTheLineOfThe32MillimetreSystem(Mount mount) {
        var made = new HandMade(HandMade.design(mount, CONCEALED)).door(Side.LEFT, CONCEALED);

        var front = made.doors().get(0).front();
        double line = mount == Mount.INSET ? 37 + 18 : 37;
        assertThat(holes(made.part("left side"), "hinge plate pilot"))
                .containsExactly(
                        "bench 2.5 x 16.0 at " + new Vec3(18, line, front.y0() + 100 - 16),
                        "bench 2.5 x 16.0 at " + new Vec3(18, line, front.y0() + 100 + 16),
                        "bench 2.5 x 16.0 at " + new Vec3(18, line, front.y1() - 100 - 16),
                        "bench 2.5 x 16.0 at " + new Vec3(18, line, front.y1() - 100 + 16));
    }

    @Test
    void keepsPlateScrewsWithinTheirHalfOfAPartition() {
        var made = new HandMade(HandMade.design(Mount.OVERLAY, CONCEALED))
                .door(Side.RIGHT, CONCEALED)
                .door(Side.LEFT, CONCEALED);

        var pilots = new DoorHinges(made.frame, made.bays).pilots();
        assertThat(pilots).hasSize(8).extracting(SideBore::depth).allMatch(depth -> depth < 9);
        assertThat(holes(made.part("partition"), "hinge plate pilot"))
                .hasSize(8)
                .anyMatch(hole -> hole.startsWith("bench"))
                .anyMatch(hole -> hole.startsWith("show"));
    }

    @Test
    void refusesButtHingesFaceToFaceWhoseScrewsWouldMeet() {
        var made = new HandMade(HandMade.design(Mount.INSET, BUTT))
                .door(Side.RIGHT, BUTT)
                .pair(BUTT);

        assertThatThrownBy(() -> new DoorHinges(made.frame, made.bays).pilots())
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("Use a family with a screw of 10 mm or shorter");
    }

    /** Two leaves of 2 mm in a gap of 3 mm: 1 mm is let into the door, nothing into the carcass. */
    @Test
    void letsButtHingesIntoTheDoorByWhatTheGapDoesNotTake() {
        var made = new HandMade(HandMade.design(Mount.INSET, BUTT)).door(Side.LEFT, BUTT);

        var door = made.part("door 1.1");
        var mortises = door.part().features().stream()
                .filter(Pocket.class::isInstance)
                .map(Pocket.class::cast)
                .toList();
        assertThat(mortises).hasSize(2).allSatisfy(mortise -> {
            assertThat(mortise.face()).isEqualTo(Face.SHOW);
            assertThat(mortise.area().y1()).isEqualTo(door.part().width());
            assertThat(mortise.area().height()).isCloseTo(1, within(1e-9));
            assertThat(mortise.area().width()).isCloseTo(50, within(1e-9));
            assertThat(mortise.depth()).hasValue(16);
        });
    }

    @Test
    void boresDoorAndUprightFaceToFaceForAButtHinge() {
        var made = new HandMade(HandMade.design(Mount.INSET, BUTT)).door(Side.LEFT, BUTT);

        var door = made.part("door 1.1");
        var inDoor = door.part().features().stream()
                .filter(EdgeHole.class::isInstance)
                .map(EdgeHole.class::cast)
                .map(hole -> door.placement()
                        .apply(new Vec3(hole.along(), door.part().width(), hole.z())))
                .toList();
        var inUpright = new DoorHinges(made.frame, made.bays).pilots();
        assertThat(inUpright).hasSize(6);
        for (int i = 0; i < inUpright.size(); i++) {
            assertThat(inDoor.get(i).z()).isCloseTo(inUpright.get(i).z(), within(1e-9));
            assertThat(inDoor.get(i).y())
                    .isCloseTo(inUpright.get(i).y(), within(1e-9))
                    .isEqualTo(8, within(1e-9));
            assertThat(inDoor.get(i).x() - inUpright.get(i).x()).isCloseTo(3, within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(Mount.class)
    void opensDoorsClearOfEachOtherAndOfDrawersOnTheirWayOut(Mount mount) {
        var design = HandMade.design(mount, CONCEALED);
        apart(new HandMade(design).pair(CONCEALED).drawer());
        apart(new HandMade(design).door(Side.RIGHT, CONCEALED).drawer());
        apart(new HandMade(design).door(Side.RIGHT, CONCEALED).door(Side.LEFT, CONCEALED));
    }

    /** √(327² + 18²) - 327 = 0.4950 mm. */
    @Test
    void swingsTheInnerCornerOutByAFractionOfTheGap() {
        var made = new HandMade(HandMade.design(Mount.INSET, BUTT)).door(Side.LEFT, BUTT);
        var swing = new DoorSwing(made.frame);
        var door = made.doors().get(0);

        assertThat(door.front().width()).isCloseTo(327, within(1e-9));
        assertThat(swing.overreach(door)).isCloseTo(0.4950, within(1e-4));
        assertThat(swing.open(door)).isEqualTo(new Box3(new Vec3(21, -327, 181), new Vec3(39, 0, 739)));
        assertThat(swing.swept(door).overlap(new Box3(new Vec3(351, -400, 0), new Vec3(360, 18, 900))))
                .isLessThanOrEqualTo(0);
    }

    private static void apart(HandMade made) {
        var swing = new DoorSwing(made.frame);
        var open = made.doors().stream().map(swing::open).toList();
        for (int i = 0; i < open.size(); i++) {
            for (int j = i + 1; j < open.size(); j++) {
                assertThat(open.get(i).overlap(open.get(j))).isLessThanOrEqualTo(0);
            }
        }
        for (var group : made.assembly().groups()) {
            for (var part : group.parts()) {
                var travel = group.travel();
                var out = part.box()
                        .union(new Box3(
                                part.box().min().plus(travel), part.box().max().plus(travel)));
                boolean door = group.name().startsWith("door");
                open.stream()
                        .filter(box -> !door)
                        .forEach(box ->
                                assertThat(box.overlap(out)).as(part.label()).isLessThanOrEqualTo(0));
            }
        }
    }

    private static List<String> holes(PlacedPart placed, String purpose) {
        var found = new ArrayList<String>();
        for (var feature : placed.part().features()) {
            if (feature instanceof Hole hole && hole.purpose().equals(purpose)) {
                double z = hole.face() == Face.BENCH ? 0 : placed.part().thickness();
                found.add(hole.face().name().toLowerCase(Locale.ROOT) + " " + hole.diameter() + " x "
                        + hole.depth().orElseThrow() + " at "
                        + placed.placement().apply(new Vec3(hole.x(), hole.y(), z)));
            }
        }
        return found;
    }
}
