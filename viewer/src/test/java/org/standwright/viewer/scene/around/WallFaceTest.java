package org.standwright.viewer.scene.around;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.WallFrame;
import org.standwright.file.FileKind;
import org.standwright.geom.Axis;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.Sample;
import org.standwright.viewer.scene.surface.ClosedCheck;
import org.standwright.viewer.scene.surface.Surface;

class WallFaceTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final double THICKNESS = 60;

    @ParameterizedTest
    @MethodSource("walls")
    void theSlabIsClosedAndLiesBehindEverything(String name) {
        CleatWall walls = Sample.builtWall(name);
        for (var wall : walls.walls()) {
            var face = WallFace.of(walls, wall.number());

            assertThat(new ClosedCheck().add(face.slab()).open()).isZero();
            assertThat(least(face.slab(), wall)).isGreaterThan(1);
            assertThat(face.obstructions()).hasSameSizeAs(wall.zones());
            assertThat(face.obstructions())
                    .allSatisfy(obstruction -> assertThat(
                                    new ClosedCheck().add(obstruction.itself()).open())
                            .isZero());
            if (!face.studs().isEmpty()) {
                assertThat(least(face.studs(), wall)).isPositive().isLessThan(least(face.slab(), wall));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("walls")
    void nobodyStandsBehindAWallOrInOne(String name) {
        CleatWall walls = Sample.builtWall(name);
        var figure = Around.of(walls).figure().box();

        assertThat(walls.walls())
                .allSatisfy(
                        wall -> assertThat(figure.overlap(WallFace.box(wall))).isNegative());
        assertThat(walls.walls().stream()
                        .map(wall -> wall.frame().local(figure.centre()).y()))
                .allSatisfy(into -> assertThat(into).isNegative());
    }

    @Test
    void aSingleWallHasTheVolumeOfItsOutlineWithoutDoorsAndWindows() {
        CleatWall walls = Sample.builtWall("door-wall");
        var wall = walls.wall(1);
        double openings = wall.zones().stream()
                .filter(zone -> Obstruction.isOpening(zone.kind()))
                .mapToDouble(zone -> zone.itself().area())
                .sum();

        assertThat(walls.walls()).hasSize(1);
        assertThat(openings).isPositive();
        assertThat(WallFace.of(walls, 1).slab().volume())
                .isCloseTo((wall.outline().area() - openings) * THICKNESS, within(1.0));
    }

    @Test
    void whatStandsBeforeAWallStandsOutByItsDepth() {
        CleatWall walls = Sample.builtWall("door-wall");
        var wall = walls.wall(1);
        var face = WallFace.of(walls, 1);
        int radiator = at(wall, Obstacle.Kind.RADIATOR);
        int window = at(wall, Obstacle.Kind.WINDOW);

        assertThat(least(face.obstructions().get(radiator).itself(), wall))
                .isEqualTo(-wall.zones().get(radiator).depth());
        assertThat(least(face.obstructions().get(window).itself(), wall)).isPositive();
        assertThat(face.obstructions().get(window).casing().triangleCount()).isEqualTo(4 * 12);
        assertThat(face.obstructions().get(window).styleClass()).isEqualTo("obstacle-window");
        assertThat(face.obstructions().get(radiator).sign().words()).isEqualTo("radiator");
    }

    @Test
    void aDoorSweepsItsSectorBeforeTheWall() {
        var frame = new WallFrame(Vec3.ZERO, Axis.X_PLUS);
        for (var side : Swing.Side.values()) {
            var swing = new DoorSwing(frame, new Rect(1000, 0, 1800, 2000), new Swing(side, 90, 45)).surface();
            var box = AroundTest.box(swing);
            double area = 3 * swing.volume() / box.min().z(); // cones from the origin to a flat face

            // a quarter of a circle, followed from inside by chords of 10°
            assertThat(area).isBetween(0.99 * Math.PI * 800 * 800 / 4, Math.PI * 800 * 800 / 4);
            assertThat(box.min().x()).isCloseTo(1000, within(1e-9));
            assertThat(box.max().x()).isCloseTo(1800, within(1e-9));
            assertThat(box.min().y()).isCloseTo(-800, within(1e-9));
            assertThat(box.max().y()).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void everyDoorThatOpensIntoTheRoomHasItsSwing() {
        CleatWall walls = Sample.builtWall("door-wall");
        long swings = walls.wall(1).wall().obstacles().stream()
                .filter(obstacle -> obstacle.swing().isPresent())
                .count();

        assertThat(swings).isPositive();
        assertThat(WallFace.of(walls, 1).swings()).hasSize((int) swings);
    }

    /** One with a slanted edge, some round corners, one with doors and windows; all of them in a full run. */
    static Stream<String> walls() {
        return FULL ? Sample.names(FileKind.CLEAT_WALL).stream() : Stream.of("attic-wall", "corner-walls", "door-wall");
    }

    private static int at(CleatedWall wall, Obstacle.Kind kind) {
        return wall.zones().stream().map(Zone::kind).toList().indexOf(kind);
    }

    /** How far a surface's foremost point lies behind the true surface of a wall. */
    private static double least(Surface surface, CleatedWall wall) {
        return IntStream.range(0, surface.pointCount())
                .mapToDouble(i -> wall.frame().local(surface.point(i)).y())
                .min()
                .orElseThrow();
    }
}
