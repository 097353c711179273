package org.standwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class LoopTest {
    private static final Offset<Double> EXACT = within(1e-9);
    /** A slot of 30 mm between centres, 10 mm wide. */
    private static final Loop SLOT = new Loop(List.of(
            new Loop.Corner(0, 0),
            new Loop.Corner(new Vec2(30, 0), 1),
            new Loop.Corner(30, 10),
            new Loop.Corner(new Vec2(0, 10), 1)));

    /** Values as the documentation of ezdxf and references 8 give them (vector 52). */
    @ParameterizedTest
    @CsvSource({"90, 0.414213562", "45, 0.198912367", "180, 1", "-90, -0.414213562"})
    void bulgesAsTheFormatTellsThem(double degrees, double bulge) {
        assertThat(Bend.bulge(Math.toRadians(degrees))).isCloseTo(bulge, EXACT);
    }

    /** Vector 53: a quarter from (10, 0) to (0, 10) round the origin. */
    @Test
    void knowsTheCircleOfAQuarter() {
        var quarter = new Bend(new Vec2(10, 0), new Vec2(0, 10), Bend.bulge(Math.PI / 2));

        assertThat(quarter.radius()).isCloseTo(10.0, within(1e-9));
        assertThat(quarter.sagitta()).isCloseTo(2.928932, within(1e-6));
        assertThat(quarter.centre().length()).isLessThan(1e-9);
        assertThat(quarter.length()).isCloseTo(5 * Math.PI, EXACT);
        assertThat(quarter.at(0.5)
                        .minus(new Vec2(10 * Math.sqrt(0.5), 10 * Math.sqrt(0.5)))
                        .length())
                .isLessThan(1e-9);
    }

    @Test
    void addsItsArcsToItsArea() {
        assertThat(SLOT.area()).isCloseTo(300 + 25 * Math.PI, EXACT);
        assertThat(SLOT.length()).isCloseTo(60 + 10 * Math.PI, EXACT);
        assertThat(SLOT.bounds()).isEqualTo(new Rect(-5, 0, 35, 10));
    }

    @Test
    void runsLeftAboutWhicheverWayItIsGiven() {
        var other = new Loop(List.of(
                new Loop.Corner(new Vec2(0, 10), 0),
                new Loop.Corner(new Vec2(30, 10), -1),
                new Loop.Corner(30, 0),
                new Loop.Corner(new Vec2(0, 0), -1)));

        assertThat(other.area()).isCloseTo(SLOT.area(), EXACT);
        assertThat(other.bounds()).isEqualTo(SLOT.bounds());
    }

    @Test
    void keepsItsArcsOutsideWhenMirrored() {
        var mirrored = SLOT.moved(at -> new Vec2(100 - at.y(), 7 - at.x()));

        assertThat(mirrored.area()).isCloseTo(SLOT.area(), EXACT);
        assertThat(mirrored.bounds()).isEqualTo(new Rect(90, -28, 100, 12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.1, 0.001})
    void pointsStayWithinATolerance(double tolerance) {
        var points = SLOT.points(tolerance);

        assertThat(points).contains(new Vec2(30, 0), new Vec2(0, 10));
        assertThat(SLOT.area() - polygon(points).getArea()).isBetween(0.0, tolerance * 10 * Math.PI);
    }

    /** Against JTS, on the same line in very short pieces. */
    @Test
    void agreesWithAnotherLibraryOnRandomLoops() {
        var random = new SplittableRandom(11);
        for (int i = 0; i < 100; i++) {
            double r = random.nextDouble(20, 100);
            var loop = new Loop(List.of(
                    new Loop.Corner(new Vec2(0, 0), random.nextDouble(-0.2, 0.9)),
                    new Loop.Corner(new Vec2(r, random.nextDouble(-5, 5)), random.nextDouble(-0.2, 0.9)),
                    new Loop.Corner(r, r),
                    new Loop.Corner(new Vec2(random.nextDouble(-5, 5), r), random.nextDouble(-0.2, 0.9))));
            var polygon = polygon(loop.points(1e-5));
            var box = polygon.getEnvelopeInternal();

            assertThat(loop.area()).isCloseTo(polygon.getArea(), within(1e-2));
            assertThat(loop.length()).isCloseTo(polygon.getLength(), within(1e-3));
            assertThat(loop.bounds().x0()).isCloseTo(box.getMinX(), within(2e-5));
            assertThat(loop.bounds().y0()).isCloseTo(box.getMinY(), within(2e-5));
            assertThat(loop.bounds().x1()).isCloseTo(box.getMaxX(), within(2e-5));
            assertThat(loop.bounds().y1()).isCloseTo(box.getMaxY(), within(2e-5));
        }
    }

    @Test
    void refusesWhatEnclosesNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Loop(List.of(new Loop.Corner(0, 0), new Loop.Corner(10, 0))))
                .withMessageContaining("encloses nothing");
    }

    private static Polygon polygon(List<Vec2> points) {
        var ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            var at = points.get(i % points.size());
            ring[i] = new Coordinate(at.x(), at.y());
        }
        return new GeometryFactory().createPolygon(ring);
    }
}
