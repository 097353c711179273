package org.standwright.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;

class PoseTest {
    private static final Part BOARD = Part.blank("board", new Material("ply", 20, 680, Grain.ALONG_LENGTH), 400, 300);
    /** Fixed at the bottom, a drawer that comes 250 mm to the front, and a machine on top: 0,0,0 to 400,300,220. */
    private static final Assembly STAND = new Assembly(
            "stand",
            List.of(
                    Group.fixed("carcass", List.of(lying("bottom", 0)), List.of()),
                    new Group("drawer 1", new Vec3(0, -250, 0), List.of(lying("front", 100)), List.of()),
                    new Group("drawer 2", new Vec3(0, -200, 0), List.of(lying("box", 60)), List.of()),
                    Group.fixed(
                            "machine",
                            List.of(),
                            List.of(new Block("saw", Block.Kind.MACHINE, box(0, 0, 120, 400, 300, 220))))),
            List.of());

    @Test
    void closedMovesNothing() {
        var closed = Pose.closed(STAND);

        for (var group : STAND.groups()) {
            assertThat(closed.shift(group.name(), box(0, 0, 0, 1, 1, 1))).isEqualTo(Vec3.ZERO);
        }
        assertThat(closed.box()).isEqualTo(STAND.box()).isEqualTo(box(0, 0, 0, 400, 300, 220));
    }

    @Test
    void opensOneDrawerByAShareOfItsTravel() {
        var pose = Pose.closed(STAND).withOpen("drawer 1", 0.5);

        assertThat(pose.shift("drawer 1", box(0, 0, 100, 400, 300, 120))).isEqualTo(new Vec3(0, -125, 0));
        assertThat(pose.shift("drawer 2", box(0, 0, 60, 400, 300, 80))).isEqualTo(Vec3.ZERO);
        assertThat(pose.box()).isEqualTo(box(0, -125, 0, 400, 300, 220));
    }

    @Test
    void opensAllTheWayAndShutsAgain() {
        var open = Pose.closed(STAND).withOpen("drawer 1", 1).withOpen("drawer 2", 1);

        assertThat(open.open()).isEqualTo(Map.of("drawer 1", 1.0, "drawer 2", 1.0));
        assertThat(open.moved("drawer 2", box(0, 0, 60, 400, 300, 80))).isEqualTo(box(0, -200, 60, 400, 100, 80));
        assertThat(open.withOpen("drawer 1", 0).shift("drawer 1", STAND.box())).isEqualTo(Vec3.ZERO);
    }

    @Test
    void explodesEachThingAwayFromTheCentreByTheFactor() {
        var pose = Pose.closed(STAND).exploded(0.5);

        // centre of the stand 200, 150, 110; of the bottom 200, 150, 10: 100 below, so 50 further down
        assertThat(pose.shift("carcass", box(0, 0, 0, 400, 300, 20))).isEqualTo(new Vec3(0, 0, -50));
        // centre of the machine at 170: 60 above, so 30 further up
        assertThat(pose.shift("machine", box(0, 0, 120, 400, 300, 220))).isEqualTo(new Vec3(0, 0, 30));
        assertThat(pose.box()).isEqualTo(box(0, 0, -50, 400, 300, 250));
    }

    @Test
    void opensAnExplodedDrawerBesides() {
        var pose = Pose.closed(STAND).exploded(1).withOpen("drawer 1", 0.2);

        assertThat(pose.shift("drawer 1", box(0, 0, 100, 400, 300, 130))).isEqualTo(new Vec3(0, -50, 5));
    }

    @Test
    void refusesAGroupThatIsNotThere() {
        assertThatThrownBy(() -> Pose.closed(STAND).withOpen("drawer 3", 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'stand' has no group 'drawer 3'; its groups: 'carcass', 'drawer 1', 'drawer 2',"
                        + " 'machine'.");
        assertThatThrownBy(() -> Pose.closed(STAND).shift("drawer 3", STAND.box()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("'stand' has no group 'drawer 3'");
    }

    @Test
    void refusesToOpenWhatDoesNotMove() {
        assertThatThrownBy(() -> Pose.closed(STAND).withOpen("carcass", 0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("group 'carcass' of 'stand' does not move, so it cannot be open; those that move:"
                        + " 'drawer 1', 'drawer 2'.");
    }

    @Test
    void refusesToOpenByLessThanNothingOrMoreThanAll() {
        for (double share : new double[] {-0.1, 1.01, Double.NaN}) {
            assertThatThrownBy(() -> Pose.closed(STAND).withOpen("drawer 1", share))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("group 'drawer 1' is open by " + share
                            + " of its travel, but must be by 0 (closed) to 1 (all the way).");
        }
    }

    @Test
    void refusesToPushThingsTogether() {
        for (double factor : new double[] {-0.5, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Pose.closed(STAND).exploded(factor))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("explosion of 'stand' is " + factor + ", but must be 0 or more.");
        }
    }

    private static PlacedPart lying(String label, double z) {
        return new PlacedPart(label, BOARD, new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, z)));
    }

    private static Box3 box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Box3(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
    }
}
