package org.standwright.cutlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.part.Run;

class ShapeTest {
    private static final Part BOARD = Part.blank("side", new Material("ply", 18, 680, Grain.NONE), 600, 400);

    /** One feature of each kind, and the same after half a turn in the plane, about x, about y, and in a mirror. */
    record Kind(Feature first, Feature inPlane, Feature aboutX, Feature aboutY, Feature mirrored) {}

    static Stream<Kind> kinds() {
        return Stream.of(
                new Kind(
                        new Channel(Face.SHOW, Run.ALONG, new Rect(10, 20, 110, 40), 9),
                        new Channel(Face.SHOW, Run.ALONG, new Rect(490, 360, 590, 380), 9),
                        new Channel(Face.BENCH, Run.ALONG, new Rect(10, 360, 110, 380), 9),
                        new Channel(Face.BENCH, Run.ALONG, new Rect(490, 20, 590, 40), 9),
                        new Channel(Face.SHOW, Run.ALONG, new Rect(490, 20, 590, 40), 9)),
                new Kind(
                        Hole.blind(Face.SHOW, 30, 50, 5, 12, "pin"),
                        Hole.blind(Face.SHOW, 570, 350, 5, 12, "pin"),
                        Hole.blind(Face.BENCH, 30, 350, 5, 12, "pin"),
                        Hole.blind(Face.BENCH, 570, 50, 5, 12, "pin"),
                        Hole.blind(Face.SHOW, 30, 350, 5, 12, "pin")),
                new Kind(
                        Pocket.blind(Face.SHOW, new Rect(10, 20, 110, 60), 10, 6, "plate"),
                        Pocket.blind(Face.SHOW, new Rect(490, 340, 590, 380), 10, 6, "plate"),
                        Pocket.blind(Face.BENCH, new Rect(10, 340, 110, 380), 10, 6, "plate"),
                        Pocket.blind(Face.BENCH, new Rect(490, 20, 590, 60), 10, 6, "plate"),
                        Pocket.blind(Face.SHOW, new Rect(490, 20, 590, 60), 10, 6, "plate")),
                new Kind(
                        new EdgeHole(Edge.X0, 50, 7, 4, 40, "pilot"),
                        new EdgeHole(Edge.X1, 350, 7, 4, 40, "pilot"),
                        new EdgeHole(Edge.X0, 350, 11, 4, 40, "pilot"),
                        new EdgeHole(Edge.X1, 50, 11, 4, 40, "pilot"),
                        new EdgeHole(Edge.X1, 50, 7, 4, 40, "pilot")),
                new Kind(
                        new EdgeHole(Edge.Y0, 100, 7, 4, 40, "pilot"),
                        new EdgeHole(Edge.Y1, 500, 7, 4, 40, "pilot"),
                        new EdgeHole(Edge.Y1, 100, 11, 4, 40, "pilot"),
                        new EdgeHole(Edge.Y0, 500, 11, 4, 40, "pilot"),
                        new EdgeHole(Edge.Y1, 100, 7, 4, 40, "pilot")),
                new Kind(
                        sunk(Face.SHOW, 30, 50),
                        sunk(Face.SHOW, 570, 350),
                        sunk(Face.BENCH, 30, 350),
                        sunk(Face.BENCH, 570, 50),
                        sunk(Face.SHOW, 30, 350)),
                new Kind(
                        triangle(Face.SHOW, 10, 20, 110, 20, 10, 60),
                        triangle(Face.SHOW, 590, 380, 490, 380, 590, 340),
                        triangle(Face.BENCH, 10, 380, 110, 380, 10, 340),
                        triangle(Face.BENCH, 590, 20, 490, 20, 590, 60),
                        triangle(Face.SHOW, 590, 20, 490, 20, 590, 60)));
    }

    private static Hole sunk(Face face, double x, double y) {
        return new Hole(face, x, y, 5, OptionalDouble.empty(), Optional.of(new Recess.Countersink(10, 90)), "screw");
    }

    private static Pocket triangle(Face face, double... xy) {
        return new Pocket(face, outline(xy), 3, OptionalDouble.of(6), "plate");
    }

    private static Contour contour(double... xy) {
        return new Contour(outline(xy), "bracket");
    }

    private static Outline outline(double... xy) {
        return new Outline(IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Vec2(xy[2 * i], xy[2 * i + 1]))
                .toList());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isTheSameWhicheverWayRoundThePartLies(Kind kind) {
        var shape = shape(kind.first);

        assertThat(shape(kind.inPlane)).isEqualTo(shape);
        assertThat(shape(kind.aboutX)).isEqualTo(shape);
        assertThat(shape(kind.aboutY)).isEqualTo(shape);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isAnotherForAMirroredPart(Kind kind) {
        assertThat(shape(kind.mirrored)).isNotEqualTo(shape(kind.first));
        assertThat(Shape.mirrored(BOARD.with(kind.mirrored))).isEqualTo(shape(kind.first));
    }

    @Test
    void tellsPocketsApartByTheirCorners() {
        var area = new Rect(10, 20, 110, 60);

        assertThat(shape(Pocket.through(area, 10, "cable"))).isNotEqualTo(shape(Pocket.through(area, 12, "cable")));
    }

    @Test
    void tellsAHoleIntoAnEndFromOneIntoAnEdge() {
        // both fill the same box in the corner
        assertThat(shape(new EdgeHole(Edge.X0, 2, 9, 4, 4, "pin")))
                .isNotEqualTo(shape(new EdgeHole(Edge.Y0, 2, 9, 4, 4, "pin")));
    }

    @Test
    void aCutoutIsTheSameFromEitherFace() {
        var cable = Pocket.through(new Rect(270, 180, 330, 220), 10, "cable");

        assertThat(shape(cable)).isEqualTo(shape(new Pocket(Face.BENCH, cable.outline(), 10, cable.depth(), "cable")));
    }

    @ParameterizedTest
    @EnumSource(Edge.class)
    void tellsABevelByTheEdgeAndTheFaceThatItTakesFrom(Edge edge) {
        // a hole off the middle tells the four edges apart
        var bevel = new Bevel(edge, Face.SHOW, 45, 18);
        var across = opposite(edge);

        assertThat(marked(new Bevel(edge, Face.BENCH, 45, 18))).isNotEqualTo(marked(bevel));
        assertThat(marked(new Bevel(across, Face.SHOW, 45, 18))).isNotEqualTo(marked(bevel));
        assertThat(marked(new Bevel(edge, Face.SHOW, 30, 18))).isNotEqualTo(marked(bevel));
        assertThat(marked(new Bevel(edge, Face.SHOW, 45, 9))).isNotEqualTo(marked(bevel));
        // turned in the plane, the hole has gone to the other corner
        assertThat(Shape.of(BOARD.with(new Bevel(across, Face.SHOW, 45, 18), Hole.through(570, 350, 8, "mark"))))
                .isEqualTo(marked(bevel));
    }

    @ParameterizedTest
    @EnumSource(Edge.class)
    void findsTheMirrorImageOfABevelledPart(Edge edge) {
        var part = BOARD.with(new Bevel(edge, Face.SHOW, 45, 18), Hole.through(30, 50, 8, "mark"));
        var mirrored = BOARD.with(
                new Bevel(edge.isEnd() ? opposite(edge) : edge, Face.SHOW, 45, 18), Hole.through(570, 50, 8, "mark"));

        assertThat(Shape.of(mirrored)).isNotEqualTo(Shape.of(part));
        assertThat(Shape.mirrored(mirrored)).isEqualTo(Shape.of(part));
    }

    /** It takes all of one face, so its box is that of the whole board. */
    @Test
    void tellsTheEdgesOfABevelApartThatIsAsWideAsItsBoard() {
        var strip = Part.blank("wedge", BOARD.material(), 600, 18);
        var mark = new EdgeHole(Edge.X0, 9, 3, 2, 20, "mark");

        assertThat(Shape.of(strip.with(new Bevel(Edge.Y0, Face.SHOW, 45, 18), mark)))
                .isNotEqualTo(Shape.of(strip.with(new Bevel(Edge.Y1, Face.SHOW, 45, 18), mark)));
    }

    @Test
    void tellsHolesApartByWhatSinksThem() {
        var plain = Hole.through(30, 50, 5, "screw");
        var sunk = plain.with(new Recess.Countersink(10, 90));

        assertThat(shape(sunk)).isNotEqualTo(shape(plain));
        assertThat(shape(plain.with(new Recess.Countersink(10, 82)))).isNotEqualTo(shape(sunk));
        assertThat(shape(plain.with(new Recess.Countersink(11, 90)))).isNotEqualTo(shape(sunk));
        assertThat(shape(plain.with(new Recess.Counterbore(10, 2.5)))).isNotEqualTo(shape(sunk));
        assertThat(shape(plain.with(new Recess.Counterbore(10, 2.5))))
                .isNotEqualTo(shape(plain.with(new Recess.Counterbore(10, 3))));
        // a sum's rounding is no difference
        assertThat(shape(plain.with(new Recess.Countersink(0.1 + 0.2 + 9.7, 90))))
                .isEqualTo(shape(sunk));
    }

    @Test
    void tellsOutlinesApartThatFillTheSameBox() {
        assertThat(shape(triangle(Face.SHOW, 10, 20, 110, 20, 10, 60)))
                .isNotEqualTo(shape(triangle(Face.SHOW, 10, 20, 110, 20, 110, 60)));
        assertThat(shape(contour(0, 0, 600, 0, 600, 300, 0, 400)))
                .isNotEqualTo(shape(contour(0, 0, 600, 0, 550, 400, 0, 400)));
    }

    @Test
    void findsAContourAgainWhicheverWayRoundItsPartLies() {
        var sloped = shape(contour(0, 0, 600, 0, 600, 300, 0, 400));

        assertThat(shape(contour(600, 400, 0, 400, 0, 100, 600, 0))).isEqualTo(sloped);
        // cut right through, it is its own mirror image once it is turned over
        assertThat(shape(contour(0, 400, 600, 400, 600, 100, 0, 0))).isEqualTo(sloped);
        assertThat(shape(contour(600, 0, 0, 0, 0, 300, 600, 400))).isEqualTo(sloped);
    }

    @Test
    void findsTheMirrorImageOfASlopedPartByWhatIsInItsFace() {
        var pin = Hole.blind(Face.SHOW, 30, 50, 5, 12, "pin");
        var part = BOARD.with(contour(0, 0, 600, 0, 600, 300, 0, 400), pin);
        var mirrored =
                BOARD.with(contour(600, 0, 0, 0, 0, 300, 600, 400), Hole.blind(Face.SHOW, 570, 50, 5, 12, "pin"));

        assertThat(Shape.of(mirrored)).isNotEqualTo(Shape.of(part));
        assertThat(Shape.mirrored(mirrored)).isEqualTo(Shape.of(part));
    }

    @Test
    void findsAnOutlineAgainWhereverItsCornersBegin() {
        assertThat(shape(contour(600, 300, 0, 400, 0, 0, 600, 0)))
                .isEqualTo(shape(contour(0, 0, 600, 0, 600, 300, 0, 400)));
    }

    private static Edge opposite(Edge edge) {
        return switch (edge) {
            case X0 -> Edge.X1;
            case X1 -> Edge.X0;
            case Y0 -> Edge.Y1;
            case Y1 -> Edge.Y0;
        };
    }

    private static Shape marked(Feature feature) {
        return Shape.of(BOARD.with(feature, Hole.through(30, 50, 8, "mark")));
    }

    private static Shape shape(Feature feature) {
        return Shape.of(BOARD.with(feature));
    }
}
