package org.standwright.router.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Loop;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.router.SampleRouters;

/** Relief of corners: what a bit sweeps, worked out with JTS from the line alone. */
class CornerTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double R = 3;
    private static final int QUARTER = 120;
    /**
     * Arcs are chords that stand off by up to 1e-5 mm, the bit's by 1e-4; where a circle touches a wall, such gaps are some
     * hundredths of a millimetre long. mm².
     */
    private static final double CHORDS = 5e-3;

    @Test
    void putsADogBoneWhereTheFormulaPutsIt() {
        // references 9 and vector 56: tool of 6.35 mm in a corner of 90°; ours is 3 % wider, so a bit that much
        // narrower
        var corner = new Corner(Vec2.ZERO, new Vec2(0, -1), new Vec2(1, 0), 50, 50);
        var relief = corner.dogBone(6.35 / Corner.WIDER);
        var middle = relief.relief().orElseThrow().getCentroid();

        assertThat(middle.getX()).isCloseTo(2.24506, within(1e-5));
        assertThat(middle.getY()).isCloseTo(2.24506, within(1e-5));
        double overcut = 6.35 / 2 - middle.getX();
        assertThat(overcut).isCloseTo(0.92994, within(1e-5));
        assertThat(Math.hypot(middle.getX(), middle.getY()) * Math.sqrt(2) - 6.35 / 2)
                .as("left without relief")
                .isCloseTo(1.31513, within(1e-5));
    }

    static Stream<double[]> corners() {
        var random = new SplittableRandom(56);
        return Stream.concat(
                        Stream.of(90.0), IntStream.range(0, FULL ? 1000 : 14).mapToObj(i -> random.nextDouble(35, 159)))
                .map(angle -> new double[] {angle, random.nextDouble(360)});
    }

    @ParameterizedTest
    @MethodSource("corners")
    void letsASharpMateIntoEveryRelievedCornerAndCutsNothingElse(double[] corner) {
        for (var relief : List.of(Router.Relief.DOG_BONE, Router.Relief.T_BONE)) {
            var mate = kite(corner[0], corner[1]);
            var part = Part.blank("plate", new Material("ply", 18, 700, Grain.NONE), 600, 600)
                    .with(new Pocket(Face.SHOW, mate, 0, OptionalDouble.of(9), "mate"));
            var machining = SampleRouters.machining(part, SampleRouters.router(relief), 18);
            var loop = loop(machining);
            var near = FACTORY.createPoint(new Coordinate(300, 300)).buffer(25);
            var cut = Flat.both(polygon(loop.points(1e-5)), near.buffer(15));
            var swept = grown(grown(cut, -R), R);
            var square = polygon(mate.corners());

            assertThat(Flat.both(Flat.without(square, swept), near).getArea())
                    .as("what the bit leaves of a corner of %.2f° with %s", corner[0], relief)
                    .isLessThan(CHORDS);
            var beyond = Flat.without(Flat.both(cut, near), square);
            assertThat(Flat.without(beyond, reliefs(mate, relief).buffer(1e-4)).getArea())
                    .as("what is cut besides the reliefs")
                    .isLessThan(CHORDS);
            assertThat(beyond.getArea()).isPositive();
        }
    }

    /** A four-sided pocket whose corner of an angle lies at (300, 300); its sides there are 120 mm long. */
    private static Outline kite(double angle, double turned) {
        var at = new Vec2(300, 300);
        var a = at.plus(along(turned, 120));
        var b = at.plus(along(turned + angle, 110));
        var far = at.plus(along(turned + angle / 2, 150 + 60 * Math.cos(Math.toRadians(angle / 2))));
        return new Outline(List.of(at, a, far, b));
    }

    private static Vec2 along(double degrees, double length) {
        double angle = Math.toRadians(degrees);
        return new Vec2(length * Math.cos(angle), length * Math.sin(angle));
    }

    /**
     * Circles of 1.03 R through every corner, their centres on the bisector, or on the longer side (references 9); from
     * circles on the bisector in sharp corners, what lies between them and where the circle meets both sides.
     */
    private static Geometry reliefs(Outline outline, Router.Relief relief) {
        Geometry all = FACTORY.createPolygon();
        double wide = 1.03 * R;
        for (int i = 0; i < 1; i++) {
            var at = outline.corner(i);
            var out = outline.corner(i + 1).minus(at);
            var back = outline.corner(i - 1).minus(at);
            double half = Math.acos((out.x() * back.x() + out.y() * back.y()) / out.length() / back.length()) / 2;
            var longer = out.length() >= back.length() ? out : back;
            var between = out.times(1 / out.length()).plus(back.times(1 / back.length()));
            var bisector = between.times(1 / between.length());
            if (relief == Router.Relief.T_BONE && half >= Math.PI / 4 - 1e-6) {
                all = union(all, disc(at.plus(longer.times(wide / longer.length())), wide));
            } else {
                all = union(all, disc(at.plus(bisector.times(wide)), wide));
                if (wide * Math.sin(2 * half) < R && half < Math.PI / 4) {
                    var from = at.plus(bisector.times(wide));
                    var to = at.plus(bisector.times(wide / Math.tan(half)));
                    all = union(
                            all,
                            FACTORY.createLineString(new Coordinate[] {
                                        new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())
                                    })
                                    .buffer(wide, QUARTER));
                }
            }
        }
        return all;
    }

    private static Geometry union(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.UNION);
    }

    /** To the last corner: the library would leave out those that stand off by less than a hundredth of the distance. */
    private static Geometry grown(Geometry area, double distance) {
        var exact = new BufferParameters(QUARTER);
        exact.setSimplifyFactor(0);
        return BufferOp.bufferOp(area, distance, exact);
    }

    private static Geometry disc(Vec2 at, double r) {
        return FACTORY.createPoint(new Coordinate(at.x(), at.y())).buffer(r, QUARTER);
    }

    private static Loop loop(Machining machining) {
        return machining.operations().stream()
                .filter(operation -> operation.work().kind() == Kind.POCKET)
                .map(operation -> ((Mark.Closed) operation.mark()).loop())
                .findFirst()
                .orElseThrow();
    }

    private static Geometry polygon(List<Vec2> points) {
        var ring = Stream.concat(points.stream(), Stream.of(points.get(0)))
                .map(at -> new Coordinate(at.x(), at.y()))
                .toArray(Coordinate[]::new);
        return FACTORY.createPolygon(ring);
    }
}
