package org.standwright.viewer.scene.around;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.kit.Side;
import org.standwright.design.wall.Person;
import org.standwright.file.FileKind;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.Sample;
import org.standwright.viewer.scene.surface.ClosedCheck;
import org.standwright.viewer.scene.surface.Surface;

class AroundTest {
    @Test
    void theFloorEndsAtTheFirstHeavyLinesAroundTheFurniture() {
        var floor = FloorGrid.around(box(0, -20, 0, 720, 560, 900));

        // 300 mm around, then on to the next 500
        assertThat(floor.area()).isEqualTo(new Rect(-500, -500, 1500, 1000));
        // 5 heavy lines one way and 4 the other; of 21 and 16 lines the rest are light
        assertThat(floor.heavyLines().triangleCount()).isEqualTo(2 * (5 + 4));
        assertThat(floor.lines().triangleCount()).isEqualTo(2 * (21 + 16 - 5 - 4));
    }

    @Test
    void theFigureIsAsTallAsItsStatureAndHoldsItsForearmsAtElbowHeight() {
        var figure = Figure.of(1750).at(new Vec3(100, 200, 0));
        var box = box(figure.surface());

        assertThat(new ClosedCheck().add(figure.surface()).open()).isZero();
        assertThat(figure.surface().volume()).isPositive();
        assertThat(box.min().z()).isBetween(0.0, 10.0);
        assertThat(box.max().z()).isCloseTo(1750, within(1e-9));
        assertThat(box.centre().x()).isCloseTo(100, within(1e-9));
        assertThat(hands(figure).centre().z()).isCloseTo(0.629 * 1750, within(1e-9));
        assertThat(inside(box, figure.box())).isTrue();
    }

    @Test
    void thePersonAtAWallHasEyesAndElbowsWhereTheDesignHasThem() {
        var figure = Figure.of(new Person(1100, 1638));

        assertThat(figure.elbow()).isEqualTo(1100);
        assertThat(figure.stature()).isCloseTo(1750, within(1e-6));
    }

    @Test
    void refusesAnElbowAboveTheShoulder() {
        assertThatThrownBy(() -> new Figure(1500, 1300, Vec3.ZERO)).hasMessageContaining("1300");
        // eyes only just above the elbow make a taller person, not an impossible one
        assertThat(Figure.of(new Person(1300, 1301)).elbow()).isEqualTo(1300);
    }

    @Test
    void boardsGoThroughThePlanerAtTheLevelOfItsBed() {
        var stand = Sample.stand("planer-stand").furniture();
        var base = stand.machine().orElseThrow().base();

        var feed = FeedWay.of(stand, 2400).orElseThrow();

        assertThat(feed.from()).isEqualTo(Side.FRONT);
        assertThat(feed.infeed().min())
                .isEqualTo(new Vec3(
                        base.min().x(), base.min().y() - 2400, stand.stack().workingHeight()));
        assertThat(feed.infeed().max().y()).isEqualTo(base.min().y());
        assertThat(feed.outfeed().min().y()).isEqualTo(base.max().y());
        assertThat(feed.outfeed().size().y()).isEqualTo(2400);
        assertThat(feed.outfeed().size().x()).isEqualTo(base.size().x());
    }

    @Test
    void boardsPassOverTheWorktopWhereThatIsTheMachinesTable() {
        var stand = Sample.stand("router-table-stand").furniture();

        var feed = FeedWay.of(stand, 2400).orElseThrow();

        assertThat(stand.machine()).isEmpty();
        assertThat(feed.infeed().min().z()).isEqualTo(stand.worktop().max().z());
        assertThat(feed.infeed().size().y()).isEqualTo(stand.worktop().size().y());
        assertThat(feed.infeed().size().x()).isCloseTo(2400, within(1e-9));
    }

    @Test
    void theOutfeedIsOppositeTheInfeedOnEverySide() {
        var table = box(0, 0, 800, 300, 400, 900);
        for (var side : Side.values()) {
            var feed = FeedWay.of(table, side, 1000);
            assertThat(feed.outfeed())
                    .isEqualTo(FeedWay.of(table, side.turned(180), 1000).infeed());
            assertThat(feed.infeed().union(feed.outfeed()).centre())
                    .isEqualTo(new Vec3(150, 200, feed.infeed().centre().z()));
        }
    }

    @Test
    void machinesThatBoardsDoNotPassThroughHaveNoFeedWay() {
        assertThat(Around.of(Sample.stand("drill-press-stand").furniture()).feed())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stands")
    void nobodyStandsInAStandOrInTheWayOfTheBoards(String name) {
        var stand = Sample.stand(name).furniture();

        var around = Around.of(stand);

        assertThat(around.figure().box().overlap(stand.assembly().box())).isNegative();
        around.feed().ifPresent(feed -> {
            assertThat(around.figure().box().overlap(feed.infeed())).isNotPositive();
            assertThat(around.figure().box().overlap(feed.outfeed())).isNotPositive();
        });
        assertThat(isOn(around.floor().area(), stand.assembly().box())).isTrue();
        assertThat(isOn(around.floor().area(), around.figure().box())).isTrue();
        assertThat(around.walls()).isEmpty();
    }

    static Stream<String> stands() {
        return Sample.names(FileKind.STAND).stream();
    }

    private static Box3 hands(Figure figure) {
        var surface = figure.surface();
        double front = box(surface).max().y();
        var points = IntStream.range(0, surface.pointCount())
                .mapToObj(surface::point)
                .filter(point -> front - point.y() < 1)
                .map(point -> new Box3(point, point))
                .toList();
        return Box3.around(points);
    }

    static Box3 box(Surface surface) {
        return Box3.around(IntStream.range(0, surface.pointCount())
                .mapToObj(surface::point)
                .map(point -> new Box3(point, point))
                .toList());
    }

    private static boolean inside(Box3 inner, Box3 outer) {
        return outer.union(inner).equals(outer);
    }

    private static boolean isOn(Rect floor, Box3 box) {
        return floor.x0() <= box.min().x()
                && floor.y0() <= box.min().y()
                && box.max().x() <= floor.x1()
                && box.max().y() <= floor.y1();
    }

    private static Box3 box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Box3(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
    }
}
