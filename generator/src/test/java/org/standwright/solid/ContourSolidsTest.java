package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;

class ContourSolidsTest {
    /** Of the L, mm². */
    private static final double AREA = 600 * 150 + 200 * 250;

    /** A board of 600 x 400 with 150 of its width left over its length and 200 of its length over its width. */
    private static Part corner() {
        return SampleParts.plain()
                .with(contour(
                        new Vec2(0, 0),
                        new Vec2(600, 0),
                        new Vec2(600, 150),
                        new Vec2(200, 150),
                        new Vec2(200, 400),
                        new Vec2(0, 400)));
    }

    private static Contour contour(Vec2... corners) {
        return new Contour(new Outline(Arrays.asList(corners)), "outline");
    }

    @Test
    void anLHasTwelveCorners() {
        var solid = Solids.of(corner());

        assertThat(solid.vertexCount()).isEqualTo(12);
        assertThat(solid.triangleCount()).isEqualTo(20);
        assertThat(solid.volume()).isCloseTo(AREA * 18, within(1e-6));
        assertThat(solid.centroid().x()).isCloseTo((90000 * 300 + 50000 * 100) / AREA, within(1e-9));
        assertThat(solid.centroid().y()).isCloseTo((90000 * 75 + 50000 * 275) / AREA, within(1e-9));
    }

    @Test
    void aTriangularBracketIsHalfItsBlankLessItsHole() {
        var bracket = Part.blank("bracket", SampleParts.PLYWOOD, 300, 200)
                .with(contour(new Vec2(0, 0), new Vec2(300, 0), new Vec2(0, 200)))
                .with(Hole.through(80, 60, 40, "cable"));
        var solid = Solids.of(bracket);

        assertThat(solid.volume()).isCloseTo((300 * 200 / 2.0 - Math.PI * 20 * 20) * 18, within(1.0));
        assertThat(ReadBack.of(solid).euler()).isZero();
    }

    @Test
    void aGrooveEndsWhereTheContourDoes() {
        var part = corner().with(Channel.along(Face.SHOW, 200, 210, 600, 9));

        assertThat(Solids.of(part).volume()).isCloseTo(AREA * 18 - 200 * 10 * 9, within(1e-6));
    }

    @Test
    void aBevelTakesFromWhatTheContourLeftOfItsEdge() {
        var part = corner().with(new Bevel(Edge.X1, Face.SHOW, 45, 18));

        assertThat(Solids.of(part).volume()).isCloseTo(AREA * 18 - 18 * 18 / 2.0 * 150, within(1e-6));
    }

    @Test
    void aHoleOnTheContourIsHalfAHole() {
        var solid = Solids.of(corner().with(Hole.through(400, 150, 40, "cable")));

        assertThat(solid.volume()).isCloseTo((AREA - Math.PI * 20 * 20 / 2) * 18, within(0.5));
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }

    @Test
    void aHoleIntoAnEdgeComesOutAtTheContour() {
        var solid = Solids.of(corner().with(new EdgeHole(Edge.Y0, 400, 9, 10, 200, "bolt")));

        assertThat(solid.volume()).isCloseTo(AREA * 18 - Math.PI * 25 * 150, within(1.0));
        assertThat(ReadBack.of(solid).euler()).isZero();
    }
}
