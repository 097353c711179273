package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Run;

class SolidsTest {
    static Collection<Part> samples() {
        return SampleParts.all().values();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void closesWithTheVolumeThatTheFeaturesLeave(Part part) {
        var solid = Solids.of(part);
        var read = ReadBack.of(solid);

        assertThat(read.openEdges()).isZero();
        assertThat(DirectedEdges.occurringMoreThanOnce(solid)).isZero();
        assertThat(read.openArea()).isLessThan(1e-6);
        double expected = LayeredVolume.of(part);
        assertThat(read.volume()).isCloseTo(expected, within(1 + 1e-6 * expected));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void putsEveryVertexWithinAGridStepOfTheModel(Part part) {
        var solid = Solids.of(part);
        var surfaces = ModelSurfaces.of(part).withInnerEdges();

        for (int i = 0; i < solid.vertexCount(); i++) {
            assertThat(surfaces.distance(solid.vertex(i)))
                    .as("%s", solid.vertex(i))
                    .isLessThan(1 / 1024.0);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void staysWithinTheBlank(Part part) {
        assertThat(Solids.of(part).box())
                .isEqualTo(new Box3(Vec3.ZERO, new Vec3(part.length(), part.width(), part.thickness())));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void comesOutTheSameEveryTime(Part part) {
        assertThat(ReadBack.stl(Solids.of(part))).isEqualTo(ReadBack.stl(Solids.of(part)));
    }

    @Test
    void aPlainBoardHasEightCornersTwelveTrianglesAndEulersNumber() {
        var solid = Solids.of(SampleParts.plain());

        assertThat(solid.vertexCount()).isEqualTo(8);
        assertThat(solid.triangleCount()).isEqualTo(12);
        // V - E + F = 8 - 18 + 12 (Euler)
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
        assertThat(solid.volume()).isCloseTo(600.0 * 400 * 18, within(1e-6));
        assertThat(solid.centroid()).isEqualTo(new Vec3(300, 200, 9));
    }

    @Test
    void aBoardWithThroughHolesHasAHandleForEach() {
        var solid = Solids.of(SampleParts.grid(10, 5));

        // V - E + F = 2 - 2 genus (Euler and Poincaré)
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2 - 2 * 50);
    }

    @Test
    void aHoleTakesAwayTheVolumeOfItsCylinder() {
        var part = SampleParts.plain().with(Hole.through(300, 200, 60, "cable"));

        double removed = 600.0 * 400 * 18 - Solids.of(part).volume();
        assertThat(removed).isCloseTo(Math.PI * 30 * 30 * 18, within(1.0));
    }

    @Test
    void aCounterboredHoleIsAWideFloorRoundANarrowOne() {
        var part = SampleParts.plain()
                .with(Hole.blind(Face.SHOW, 300, 200, 26, 9, "washer"), Hole.through(300, 200, 9, "bolt"));

        var up = ReadBack.of(Solids.of(part)).upwardAreas();
        assertThat(up.keySet()).containsExactly(9f, 18f);
        assertThat(up.get(9f)).isCloseTo(Math.PI * (13 * 13 - 4.5 * 4.5), within(0.1));
        assertThat(up.get(18f)).isCloseTo(600 * 400 - Math.PI * 13 * 13, within(0.1));
    }

    @Test
    void aGrooveRunsOnThroughTheRabbetsAtItsEnds() {
        var up = ReadBack.of(Solids.of(SampleParts.drawerSide())).upwardAreas();

        double holes = 2 * Math.PI * 2 * 2;
        double groove = 6.35 * 500;
        double rabbets = 2 * 12 * (150 - 6.35);
        assertThat(up.keySet()).containsExactly(6f, 12f);
        assertThat(up.get(6f)).isCloseTo(groove + rabbets, within(1.0));
        assertThat(up.get(12f)).isCloseTo(476 * (150 - 6.35) - holes, within(1.0));
    }

    @ParameterizedTest
    @EnumSource(Edge.class)
    void aHoleIntoAnEdgeTakesAwayTheVolumeOfItsCylinderAtItsPlace(Edge edge) {
        var part = SampleParts.plain().with(new EdgeHole(edge, 100, 8, 10, 40, "dowel"));
        var solid = Solids.of(part);

        double all = 600.0 * 400 * 18;
        double taken = all - solid.volume();
        // the whole board's moment less that of what is left, by the volume that was taken
        var at = new Vec3(300, 200, 9)
                .times(all)
                .minus(solid.centroid().times(solid.volume()))
                .times(1 / taken);
        double in = edge.isFar() ? (edge.isEnd() ? 600 : 400) - 20 : 20;
        assertThat(taken).isCloseTo(Math.PI * 5 * 5 * 40, within(0.5));
        assertThat(at.x()).isCloseTo(edge.isEnd() ? in : 100, within(0.01));
        assertThat(at.y()).isCloseTo(edge.isEnd() ? 100 : in, within(0.01));
        assertThat(at.z()).isCloseTo(8, within(0.01));
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }

    @Test
    void aHoleIntoAnEdgeThatEndsInAGrooveOpensIt() {
        var part = SampleParts.plain()
                .with(
                        Channel.along(Face.SHOW, 30, 40, 600, 12),
                        new EdgeHole(Edge.Y0, 100, 10, 4, 35, "through the groove's wall"));

        // a tunnel from the edge to the groove is one handle
        assertThat(ReadBack.of(Solids.of(part)).euler()).isZero();
    }

    @Test
    void holesIntoTwoEdgesThatCrossAreOneTunnel() {
        var part = SampleParts.plain()
                .with(new EdgeHole(Edge.X0, 20, 9, 6, 40, "one"), new EdgeHole(Edge.Y0, 20, 9, 6, 40, "other"));
        var solid = Solids.of(part);

        assertThat(ReadBack.of(solid).euler()).isZero();
        // two equal cylinders square to each other have 16 r³ / 3 in common (Archimedes, The Method)
        double common = 16.0 / 3 * 27;
        assertThat(solid.volume()).isCloseTo(600.0 * 400 * 18 - 2 * Math.PI * 9 * 40 + common, within(0.01 * common));
    }

    @Test
    void aPocketWithRoundCornersTakesAwayItsRectangleLessItsCorners() {
        var part = SampleParts.plain().with(Pocket.through(new Rect(100, 100, 360, 280), 10, "motor plate"));

        double removed = 600.0 * 400 * 18 - Solids.of(part).volume();
        double corners = (4 - Math.PI) * 10 * 10;
        assertThat(removed).isCloseTo(18 * (260 * 180 - corners), within(1.0));
    }

    @Test
    void aPocketOverACornerOfTheBlankIsSquareThere() {
        var part = SampleParts.plain().with(Pocket.blind(Face.SHOW, new Rect(0, 300, 80, 400), 10, 9, "notch"));
        var up = ReadBack.of(Solids.of(part)).upwardAreas();

        assertThat(up.keySet()).containsExactly(9f, 18f);
        // one corner of the four is round
        assertThat(up.get(9f)).isCloseTo(80 * 100 - (1 - Math.PI / 4) * 100, within(0.6));
    }

    @Test
    void aCutoutInAPocketLeavesARimAllRound() {
        var part = SampleParts.plain()
                .with(
                        Pocket.blind(Face.SHOW, new Rect(100, 100, 360, 280), 10, 6, "plate"),
                        Pocket.through(new Rect(110, 110, 350, 270), 10, "opening"));
        var read = ReadBack.of(Solids.of(part));

        assertThat(read.euler()).isZero();
        assertThat(read.upwardAreas().get(12f)).isCloseTo(260 * 180 - 240 * 160, within(0.01));
    }

    @Test
    void aRoundPocketTakesAwayWhatAHoleOfItsRadiusDoes() {
        var part = SampleParts.plain().with(Pocket.through(new Rect(100, 100, 160, 160), 30, "cable"));

        double removed = 600.0 * 400 * 18 - Solids.of(part).volume();
        assertThat(removed).isCloseTo(18 * Math.PI * 30 * 30, within(1.0));
    }

    @Test
    void pocketsThatMeetInACornerEachKeepTheirOwnVertices() {
        var part = SampleParts.plain()
                .with(
                        new Channel(Face.SHOW, Run.ALONG, new Rect(100, 100, 200, 200), 9),
                        new Channel(Face.SHOW, Run.ALONG, new Rect(200, 200, 300, 300), 9));
        var solid = Solids.of(part);

        assertThat(ReadBack.of(solid).crowdedEdges()).isPositive();
        assertThat(ReadBack.of(solid).openEdges()).isZero();
        assertThat(solid.volume()).isCloseTo(600.0 * 400 * 18 - 2 * 100 * 100 * 9, within(1e-6));
        assertThat(DirectedEdges.occurringMoreThanOnce(solid)).isZero();
    }

    @Test
    void blindHolesFromBothFacesThatMeetGoRightThrough() {
        var part = SampleParts.plain()
                .with(
                        Hole.blind(Face.SHOW, 300, 200, 20, 9, "above"),
                        Hole.blind(Face.BENCH, 300, 200, 20, 9, "below"));

        assertThat(ReadBack.of(Solids.of(part)).euler()).isZero();
    }

    @Test
    void aCutThatVanishesOnTheGridLeavesTheBoardAsItIs() {
        var part = SampleParts.plain()
                .with(
                        new Channel(Face.SHOW, Run.ALONG, new Rect(100, 100, 100.0004, 200), 9),
                        Channel.along(Face.BENCH, 100, 110, 600, 0.0004),
                        Hole.through(50, 50, 0.0004, "pin prick"));

        assertThat(Solids.of(part).triangleCount()).isEqualTo(12);
    }

    @Test
    void aSkinThinnerThanTheGridIsCutAway() {
        var part = SampleParts.plain()
                .with(
                        new Channel(Face.SHOW, Run.ALONG, new Rect(0.0004, 100, 600, 110), 9),
                        Hole.blind(Face.SHOW, 300, 300, 20, 17.9997, "nearly through"));

        assertThat(ReadBack.of(Solids.of(part)).euler()).isZero();
        assertThat(Solids.of(part).volume())
                .isCloseTo(600.0 * 400 * 18 - 600 * 10 * 9 - Math.PI * 100 * 18, within(1.0));
    }

    @Test
    void namesThePartOfWhichNothingIsLeft() {
        var part = Part.blank("ghost", SampleParts.PLYWOOD, 600, 400)
                .with(Channel.along(Face.SHOW, 0, 400, 600, 9), Channel.along(Face.BENCH, 0, 400, 600, 9));

        assertThatThrownBy(() -> Solids.of(part))
                .isInstanceOf(SolidException.class)
                .hasMessage("the features of 'ghost' leave nothing of it; make some of them shallower.");
    }

    @Test
    void namesThePartThatIsTooLongForTheGrid() {
        assertThatThrownBy(() -> Solids.of(Part.blank("beam", SampleParts.PLYWOOD, 20000, 400)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("length of 'beam' is 20000.000 mm, but a solid must stay within 16384 mm.");
    }

    @Test
    void aScreenSolidHasFewerTrianglesThanOneForAFile() {
        var part = SampleParts.shelves();

        assertThat(Solids.of(part, Fineness.SCREEN).triangleCount())
                .isLessThan(Solids.of(part, Fineness.FILE).triangleCount());
    }
}
