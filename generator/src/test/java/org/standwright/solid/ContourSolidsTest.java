package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Box3;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
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

    /** A bore from the blank's edge is as deep as the blank reaches, not as the board did. */
    @Test
    void aBoreEndsWhereASmallerRectangleEnds() {
        var part = Part.blank("short", SampleParts.PLYWOOD, 300, 200)
                .with(contour(new Vec2(0, 0), new Vec2(300, 0), new Vec2(300, 100), new Vec2(0, 100)))
                .with(new EdgeHole(Edge.Y0, 50, 9, 8, 150, "bore"), Hole.through(250, 150, 40, "outside"));
        var solid = Solids.of(part);

        assertThat(solid.volume()).isCloseTo((300 * 18 - Math.PI * 4 * 4) * 100, within(0.5));
        assertThat(solid.box()).isEqualTo(new Box3(Vec3.ZERO, new Vec3(300, 100, 18)));
        assertThat(ReadBack.of(solid).euler()).isZero();
        assertThat(SelfCrossings.of(solid)).isEmpty();
    }

    @Test
    void namesThePartThatVanishesOnTheGrid() {
        assertThatThrownBy(() -> Solids.of(Part.blank("hair", SampleParts.PLYWOOD, 300, 0.0004)))
                .isInstanceOf(SolidException.class)
                .hasMessage("'hair' is shorter, narrower or thinner than 1/2048 mm; give it a size that can be cut.");
    }

    /** Whatever the kernel and its libraries make of a waist that closes on the grid, the part is named. */
    @Test
    void aWaistThatClosesOnTheGridIsBuiltOrNamed() {
        var waist = contour(
                new Vec2(0, 0),
                new Vec2(150, 99.9999),
                new Vec2(300, 0),
                new Vec2(300, 200),
                new Vec2(150, 100.0001),
                new Vec2(0, 200));
        var part = Part.blank("waist", SampleParts.PLYWOOD, 300, 200)
                .with(waist)
                .with(new Bevel(Edge.X0, Face.SHOW, 45, 9));

        try {
            assertThat(ReadBack.of(Solids.of(part)).openEdges()).isZero();
        } catch (SolidException e) {
            assertThat(e).hasMessageContaining("'waist'");
        }
    }
}
