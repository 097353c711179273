package org.standwright.viewer.scene.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Pose;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;
import org.standwright.unit.Units;
import org.standwright.viewer.scene.Sample;

/** Lengths as the model says them, measured from faces of the solids that come with the program. */
class MeasureTest {
    private static final double GRID = 1.0 / Solid.PER_MM;
    private static Sample<Stand> planer;

    @BeforeAll
    static void build() {
        planer = Sample.stand("planer-stand");
    }

    @Test
    void everyDrawerBoxIsAsWideInsideAsItsLayoutSays() {
        var drawers = planer.furniture().bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .toList();

        assertThat(drawers).hasSizeGreaterThan(5).allSatisfy(drawer -> {
            var measured = Measure.between(
                    inside("drawer " + drawer.name() + " left side", Axis.X_PLUS),
                    inside("drawer " + drawer.name() + " right side", Axis.X_MINUS));
            assertThat(measured.kind()).isEqualTo(Measured.Kind.BETWEEN);
            assertThat(measured.mm()).isCloseTo(drawer.inside().width(), within(GRID));
        });
    }

    @Test
    void saysTheInsideWidthInTheMakersUnits() {
        var measured = Measure.between(
                inside("drawer 1.1 left side", Axis.X_PLUS), inside("drawer 1.1 right side", Axis.X_MINUS));

        assertThat(measured.words(Units.MM)).isEqualTo("350 mm between them, left to right");
        assertThat(measured.words(Units.INCH)).isEqualTo("13 25/32 in between them, left to right");
    }

    @Test
    void theLineLiesOnBothFaces() {
        var measured = Measure.between(
                inside("drawer 1.1 left side", Axis.X_PLUS), inside("drawer 1.1 right side", Axis.X_MINUS));
        var line = measured.line();

        assertThat(line.from().x()).isCloseTo(42.7, within(GRID));
        assertThat(line.to().x()).isCloseTo(392.7, within(GRID));
        assertThat(line.from().y()).isEqualTo(line.to().y()).isBetween(-1.5, 498.5);
        assertThat(line.from().z()).isEqualTo(line.to().z()).isBetween(681.6, 729.6);
    }

    @Test
    void besideADrawerBoxIsRoomForItsSlide() {
        var measured = Measure.between(
                inside("left side", Axis.X_PLUS), Picked.largest(solid("drawer 1.1 left side"), Axis.X_MINUS));

        // opening from 17.7, box of 374 in the middle of 400
        assertThat(measured.mm()).isCloseTo((400 - 374) / 2.0, within(GRID));
        assertThat(measured.words(Units.MM)).isEqualTo("13 mm between them, left to right");
    }

    @Test
    void aSheetIsAsThickAsItsMaterial() {
        var side = solid("left side");

        var measured = Measure.between(Picked.outermost(side, Axis.X_MINUS), Picked.outermost(side, Axis.X_PLUS));

        assertThat(measured.kind()).isEqualTo(Measured.Kind.OVER_ALL);
        assertThat(measured.mm()).isCloseTo(planer.part("left side").material().thickness(), within(GRID));
        assertThat(measured.words(Units.MM)).isEqualTo("17.7 mm from outside to outside, left to right");
    }

    @Test
    void frontsOfOneColumnLieInOnePlane() {
        var measured = Measure.between(
                Picked.largest(solid("drawer 1.1 front"), Axis.Y_MINUS),
                Picked.largest(solid("drawer 1.2 front"), Axis.Y_MINUS));

        assertThat(measured.kind()).isEqualTo(Measured.Kind.OFFSET);
        assertThat(measured.words(Units.MM)).isEqualTo("in one plane");
    }

    @Test
    void theGapBetweenFrontsIsThatOfTheDesign() {
        var measured = Measure.between(
                Picked.outermost(solid("drawer 1.1 front"), Axis.Z_MINUS),
                Picked.outermost(solid("drawer 1.2 front"), Axis.Z_PLUS));

        assertThat(measured.words(Units.MM)).isEqualTo("3 mm between them, up and down");
    }

    @Test
    void anOpenDrawerIsMeasuredWhereItStands() {
        var pose = planer.closed().withOpen("drawer 1.1", 0.5);
        double travel = planer.furniture().bays().get(0).drawers().get(0).travel();

        var measured = Measure.between(
                Picked.largest(solid("drawer 1.2 front", pose), Axis.Y_MINUS),
                Picked.largest(solid("drawer 1.1 front", pose), Axis.Y_MINUS));

        assertThat(measured.mm()).isCloseTo(travel / 2, within(GRID));
    }

    @Test
    void squareFacesAreMeasuredAtTheNearest() {
        var measured = Measure.between(
                inside("left side", Axis.X_PLUS), Picked.outermost(solid("worktop lower layer"), Axis.Z_PLUS));

        // the housing of the sub-top, 17.7 mm wide, ends where the lower layer of the worktop, as thick, begins
        assertThat(measured.mm()).isCloseTo(2 * 17.7, within(2 * GRID));
        assertThat(measured.degrees()).isCloseTo(90, within(1e-9));
        assertThat(measured.words(Units.MM)).isEqualTo("at 90\u00b0, 35.4 mm at the nearest");
    }

    @Test
    void theBevelOfACleatStandsAt45Degrees() {
        Sample<CleatWall> wall = Sample.wall("garage-wall");
        var strip = wall.solids().solids().get(0).inPlace();
        var bevel = slanted(strip);

        var measured = Measure.between(Picked.largest(strip, Axis.Y_MINUS), bevel);

        assertThat(measured.degrees()).isCloseTo(45, within(0.01));
        assertThat(measured.words(Units.MM)).startsWith("at 45\u00b0, ");
    }

    @Test
    void aHoleIsMeasuredAlone() {
        var part = planer.part("left caster block lower");
        var hole = Picked.hole(part.inPlace(), part.placement().apply(new Vec3(22.5, 20, 8)));

        var measured = Measure.of(hole).orElseThrow();

        assertThat(measured.words(Units.MM)).isEqualTo("\u00d8 9 mm, 17.7 mm deep");
        assertThat(Measure.of(Picked.outermost(part.inPlace(), Axis.Z_PLUS))).isEmpty();
    }

    @Test
    void holesAreMeasuredFromCentreToCentreAndFromTheEdge() {
        var part = planer.part("left caster block lower");
        var solid = part.inPlace();
        var first = Picked.hole(solid, part.placement().apply(new Vec3(22.5, 20, 8)));
        var second = Picked.hole(solid, part.placement().apply(new Vec3(22.5, 100, 8)));
        var edge = Picked.outermost(solid, part.placement().along().opposite());

        assertThat(Measure.between(first, second).mm()).isCloseTo(80, within(2 * GRID));
        assertThat(Measure.between(first, second).kind()).isEqualTo(Measured.Kind.CENTRES);
        assertThat(Measure.between(edge, first).mm()).isCloseTo(22.5, within(2 * GRID));
        assertThat(Measure.between(edge, first).kind()).isEqualTo(Measured.Kind.TO_CENTRE);
    }

    @Test
    void theOtherWayRoundTheLineRunsBackwards() {
        var left = inside("drawer 1.1 left side", Axis.X_PLUS);
        var right = inside("drawer 1.1 right side", Axis.X_MINUS);

        assertThat(Measure.between(right, left).mm())
                .isEqualTo(Measure.between(left, right).mm());
        assertThat(Measure.between(right, left).line().from().x())
                .isEqualTo(Measure.between(left, right).line().to().x());
    }

    private static Face slanted(Solid solid) {
        for (int i = 0; i < solid.triangleCount(); i++) {
            var normal = solid.normal(i);
            if (Math.abs(normal.y()) > 0.1 && Math.abs(normal.z()) > 0.1) {
                return FaceAt.of(solid, i);
            }
        }
        throw new AssertionError("no slanted face");
    }

    private static Face inside(String label, Axis way) {
        return Picked.outermost(solid(label), way);
    }

    private static Solid solid(String label) {
        return planer.part(label).inPlace();
    }

    private static Solid solid(String label, Pose pose) {
        return planer.part(label).inPlace(pose);
    }
}
