package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Run;

class SolidsTest {
    static Collection<Part> samples() {
        return SampleParts.all().values();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void closesWithTheVolumeThatTheFeaturesLeave(Part part) {
        var read = ReadBack.of(Solids.of(part));

        assertThat(read.openEdges()).isZero();
        assertThat(read.openArea()).isLessThan(1e-6);
        double expected = LayeredVolume.of(part);
        assertThat(read.volume()).isCloseTo(expected, within(1 + 1e-6 * expected));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void putsEveryVertexWithinAGridStepOfTheModel(Part part) {
        var solid = Solids.of(part);
        var outlines = LayeredVolume.outlines(part);
        var levels = new ArrayList<>(LayeredVolume.levels(part));
        // half-way up the edges in which the solid touches itself
        LayeredVolume.levels(part).forEach(a -> LayeredVolume.levels(part).forEach(b -> levels.add((a + b) / 2)));

        for (int i = 0; i < solid.vertexCount(); i++) {
            var v = solid.vertex(i);
            var seenFromAbove = new GeometryFactory().createPoint(new Coordinate(v.x(), v.y()));
            assertThat(outlines.distance(seenFromAbove)).as("%s", v).isLessThan(1 / 1024.0);
            assertThat(levels).as("%s", v).anyMatch(level -> Math.abs(level - v.z()) < 1 / 1024.0);
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
