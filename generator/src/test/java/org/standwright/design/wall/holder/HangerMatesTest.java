package org.standwright.design.wall.holder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Designs;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Holder;
import org.standwright.part.SheetGood;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solids;
import org.standwright.unit.Units;

/** A hanger's solid on a strip's, both as they are written to files, seen from the end: y into the wall, z up. */
class HangerMatesTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    /** Solids lie on a grid of 1/1024 mm. */
    private static final double ROUNDING = 0.002;

    static Stream<Arguments> cleats() {
        return Stream.of(30.0, 37.5, 45.0)
                .flatMap(tilt -> Stream.of(0.0, 2.0)
                        .flatMap(blunt ->
                                Stream.of(12.0, 18.0, 24.0).map(thickness -> Arguments.of(tilt, blunt, thickness))));
    }

    @ParameterizedTest
    @MethodSource("cleats")
    void touchesAlongTheBevelAndNowhereReachesIn(double tilt, double blunt, double thickness) {
        var cleat = cleat(tilt, blunt, thickness);
        var strip = strip(cleat);
        var hanger = hanger(cleat);

        assertThat(strip.distance(hanger)).isLessThanOrEqualTo(ROUNDING);
        assertThat(strip.intersection(hanger).getArea()).isLessThan(ROUNDING * thickness * 2);
        double land = blunt / tan(tilt);
        for (double share : new double[] {0.01, 0.25, 0.5, 0.75, 0.99}) {
            double y = -thickness + land + share * (thickness - 2 * land);
            var point = FACTORY.createPoint(new Coordinate(y, blunt - (y + thickness) * tan(tilt)));
            assertThat(point.distance(strip.getBoundary())).isLessThanOrEqualTo(ROUNDING);
            assertThat(point.distance(hanger.getBoundary())).isLessThanOrEqualTo(ROUNDING);
        }
    }

    @ParameterizedTest
    @MethodSource("cleats")
    void standsOffByWhatItIsMovedSquareToTheBevel(double tilt, double blunt, double thickness) {
        var cleat = cleat(tilt, blunt, thickness);
        double angle = Math.toRadians(tilt);
        for (double gap : new double[] {0.25, 1, 2.5}) {
            var moved = moved(hanger(cleat), gap * Math.sin(angle), gap * Math.cos(angle));

            assertThat(strip(cleat).distance(moved)).isCloseTo(gap, within(ROUNDING));
        }
    }

    @ParameterizedTest
    @MethodSource("cleats")
    void comesOutOnceItIsLiftedAndNotBefore(double tilt, double blunt, double thickness) {
        var cleat = cleat(tilt, blunt, thickness);
        var strip = strip(cleat);
        var hanger = hanger(cleat);
        for (double by = 0.5; by < 4 * thickness; by += 0.5) {
            assertThat(strip.distance(moved(hanger, -by, cleat.headroom()))).isPositive();
        }
        assertThat(strip.intersection(moved(hanger, -5, 0)).getArea()).isPositive();
        // 1 mm too little: the blunted tips still meet
        double justFree = cleat.rise() - 2 * blunt;
        double out = thickness - blunt / tan(tilt) - 0.5;
        assertThat(strip.intersection(moved(hanger, -out, justFree - 1)).getArea())
                .isPositive();
        assertThat(strip.distance(moved(hanger, -out, justFree + 1))).isPositive();
    }

    @ParameterizedTest
    @MethodSource("cleats")
    void liesInThePlaneOfTheStripsWithItsLongFaceToTheWall(double tilt, double blunt, double thickness) {
        var box = hanger(cleat(tilt, blunt, thickness)).getEnvelopeInternal();
        var cleat = cleat(tilt, blunt, thickness);

        assertThat(box.getMinX()).isCloseTo(-thickness, within(ROUNDING));
        assertThat(box.getMaxX()).isCloseTo(0, within(ROUNDING));
        assertThat(box.getMaxY()).isCloseTo(cleat.hangerAbove(), within(ROUNDING));
        assertThat(box.getMinY()).isCloseTo(2 * blunt - cleat.rise(), within(ROUNDING));
    }

    private static Cleat cleat(double tilt, double blunt, double thickness) {
        SheetGood board = Designs.sheet("cleat board", thickness, 2440, 1220);
        return new Cleat(board, 100, tilt, blunt, OptionalDouble.empty());
    }

    private static Geometry strip(Cleat cleat) {
        return end(Workshop.strip(cleat, 400));
    }

    private static Geometry hanger(Cleat cleat) {
        var panel = new Holder.Panel("panel", Workshop.things(1, 50, 50, 50), Optional.empty(), false, 400, 300);
        return end(Workshop.part(
                new HolderMaker(Workshop.wall(cleat, Designs.BOARD_12, Designs.BOARD_6, Units.MM))
                        .make(panel, "/holders/0"),
                "hanger"));
    }

    /** The outline of a solid's left end, which is convex. */
    private static Geometry end(PlacedPart placed) {
        var solid = new PlacedSolid("", placed, Solids.of(placed.part())).inPlace();
        var corners = IntStream.range(0, solid.vertexCount())
                .mapToObj(solid::vertex)
                .filter(vertex -> vertex.x() == solid.box().min().x())
                .map(vertex -> new Coordinate(vertex.y(), vertex.z()))
                .toArray(Coordinate[]::new);
        return FACTORY.createMultiPointFromCoords(corners).convexHull();
    }

    private static Geometry moved(Geometry shape, double y, double z) {
        return AffineTransformation.translationInstance(y, z).transform(shape);
    }

    private static double tan(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }
}
