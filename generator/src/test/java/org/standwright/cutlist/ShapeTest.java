package org.standwright.cutlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
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
                        new EdgeHole(Edge.Y1, 100, 7, 4, 40, "pilot")));
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

    private static Shape shape(Feature feature) {
        return Shape.of(BOARD.with(feature));
    }
}
