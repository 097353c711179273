package org.standwright.viewer.scene.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
import org.standwright.file.FileKind;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;
import org.standwright.viewer.scene.Sample;
import org.standwright.viewer.scene.section.SectionPlane.Across;
import org.standwright.viewer.scene.section.SectionPlane.Kept;
import org.standwright.viewer.scene.surface.ClosedCheck;

class SectionTest {
    private static final Part BOARD = Part.blank("board", new Material("board", 20, 680, Grain.NONE), 400, 300);
    private static final Placement LYING = new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(10, 20, 30));
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final double HALF_UNIT = 0.5 / Solid.PER_MM;

    @Test
    void keepsTheShareOfABoardThatLiesBeforeThePlane() {
        var piece = cut(BOARD, LYING, new SectionPlane(Across.X, 110, Kept.LOWER));

        assertThat(piece.volume()).isCloseTo((100 - HALF_UNIT) * 300 * 20, within(1e-3));
        assertThat(new ClosedCheck().add(piece.rest()).add(piece.cap()).open()).isZero();
        assertThat(new ClosedCheck().add(piece.rest()).open()).isPositive();
    }

    @Test
    void cutsTurnedBoardsWhereTheyStand() {
        var upright = new Placement(Axis.Z_MINUS, Axis.X_MINUS, new Vec3(350, 50, 500));
        // z from 100 to 500, x from 50 to 350, y from 50 to 70
        assertThat(cut(BOARD, upright, new SectionPlane(Across.Z, 150, Kept.HIGHER))
                        .volume())
                .isCloseTo((350 + HALF_UNIT) * 300 * 20, within(1e-3));
        assertThat(cut(BOARD, upright, new SectionPlane(Across.Z, 150, Kept.LOWER))
                        .volume())
                .isCloseTo((50 - HALF_UNIT) * 300 * 20, within(1e-3));
        assertThat(cut(BOARD, upright, new SectionPlane(Across.X, 150, Kept.LOWER))
                        .volume())
                .isCloseTo((100 - HALF_UNIT) * 400 * 20, within(1e-3));
        assertThat(cut(BOARD, upright, new SectionPlane(Across.Y, 65, Kept.HIGHER))
                        .volume())
                .isCloseTo((5 + HALF_UNIT) * 400 * 300, within(1e-3));
    }

    @Test
    void theCutFaceLooksTowardsWhatIsCutAway() {
        for (var kept : Kept.values()) {
            var cap = cut(BOARD, LYING, new SectionPlane(Across.Z, 40, kept)).cap();
            var a = cap.point(cap.corner(0, 0));
            var b = cap.point(cap.corner(0, 1)).minus(a);
            var c = cap.point(cap.corner(0, 2)).minus(a);
            assertThat(Math.signum(b.x() * c.y() - b.y() * c.x())).isEqualTo(kept == Kept.LOWER ? 1 : -1);
        }
    }

    @Test
    void aHoleStaysAHoleInTheCutFace() {
        var drilled = BOARD.with(Hole.through(200, 150, 80, "cable"));
        var piece = cut(drilled, LYING, new SectionPlane(Across.Z, 40, Kept.LOWER));

        double area = piece.cap().volume() / (piece.cap().point(0).z() / 3);

        assertThat(area).isCloseTo(400 * 300 - Math.PI * 40 * 40, within(1.0));
        assertThat(new ClosedCheck().add(piece.rest()).add(piece.cap()).open()).isZero();
    }

    @Test
    void whatTouchesThePlaneIsKeptWholeOrLeftOutWhole() {
        var low = placed("low", BOARD, LYING); // z from 30 to 50
        var high = placed("high", BOARD, LYING.moved(new Vec3(0, 0, 20))); // z from 50 to 70
        var assembly = assembly(low, high);
        var solids = AssemblySolids.of(assembly, Fineness.SCREEN).solids();

        var section = Section.of(solids, Pose.closed(assembly), new SectionPlane(Across.Z, 50, Kept.LOWER));
        assertThat(section.pieces()).containsExactly(new Piece.Whole(solids.get(0)));

        var above = Section.of(solids, Pose.closed(assembly), new SectionPlane(Across.Z, 50, Kept.HIGHER));
        assertThat(above.pieces()).containsExactly(new Piece.Whole(solids.get(1)));
    }

    @Test
    void equalPartsThatAreCutAlikeShareTheirSurfaces() {
        var assembly = assembly(placed("one", BOARD, LYING), placed("two", BOARD, LYING.moved(new Vec3(0, 0, 100))));
        var section = Section.of(
                AssemblySolids.of(assembly, Fineness.SCREEN).solids(),
                Pose.closed(assembly),
                new SectionPlane(Across.X, 100, Kept.LOWER));

        assertThat(section.pieces()).hasSize(2);
        assertThat(((Piece.Cut) section.pieces().get(0)).rest())
                .isSameAs(((Piece.Cut) section.pieces().get(1)).rest());
    }

    @Test
    void cutsBoxesToo() {
        var box = new Box3(Vec3.ZERO, new Vec3(10, 20, 30));

        assertThat(new SectionPlane(Across.Y, 5, Kept.LOWER).kept(box))
                .contains(new Box3(Vec3.ZERO, new Vec3(10, 5, 30)));
        assertThat(new SectionPlane(Across.Y, 5, Kept.HIGHER).kept(box))
                .contains(new Box3(new Vec3(0, 5, 0), new Vec3(10, 20, 30)));
        assertThat(new SectionPlane(Across.Y, 25, Kept.LOWER).kept(box)).contains(box);
        assertThat(new SectionPlane(Across.Y, 20, Kept.HIGHER).kept(box)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("everything")
    void bothSidesAreClosedAndTogetherTheWhole(String name) {
        var sample = name.endsWith("stand") ? Sample.stand(name) : Sample.wall(name);
        var random = new SplittableRandom(name.hashCode());
        var pose = sample.closed();
        double whole = sample.solids().solids().stream()
                .mapToDouble(placed -> placed.solid().volume())
                .sum();
        for (var across : Across.values()) {
            for (int i = 0; i < 6; i++) {
                double at = place(sample, across, i, random);
                double sum = 0;
                for (var kept : Kept.values()) {
                    var plane = new SectionPlane(across, at, kept);
                    var section = Section.of(sample.solids().solids(), pose, plane);
                    sum += section.pieces().stream()
                            .mapToDouble(SectionTest::volume)
                            .sum();
                    assertThat(section.pieces())
                            .allSatisfy(piece -> assertThat(open(piece))
                                    .as("%s cut at %s", piece.placed().label(), plane)
                                    .isZero());
                }
                assertThat(sum).as("%s at %s", across, at).isCloseTo(whole, within(1e-7 * whole));
            }
        }
    }

    /** One stand with many drawers, one wall that goes round a corner, one with holders; all of them in a full run. */
    static Stream<String> everything() {
        return FULL
                ? Stream.concat(Sample.names(FileKind.STAND).stream(), Sample.names(FileKind.CLEAT_WALL).stream())
                : Stream.of("planer-stand", "corner-walls", "door-wall");
    }

    /** Half of them through a face of a board, where most goes wrong. */
    private static double place(Sample<?> sample, Across across, int i, SplittableRandom random) {
        var box = sample.furniture().assembly().box();
        var parts = sample.furniture().assembly().parts();
        return i % 2 == 0
                ? across.of(parts.get(random.nextInt(parts.size())).box().max())
                : random.nextDouble(across.of(box.min()), across.of(box.max()));
    }

    private static double volume(Piece piece) {
        return piece instanceof Piece.Cut cut
                ? cut.volume()
                : piece.placed().solid().volume();
    }

    private static long open(Piece piece) {
        return piece instanceof Piece.Cut cut
                ? new ClosedCheck().add(cut.rest()).add(cut.cap()).open()
                : 0;
    }

    private static Piece.Cut cut(Part part, Placement placement, SectionPlane plane) {
        var assembly = assembly(placed("board", part, placement));
        List<PlacedSolid> solids = AssemblySolids.of(assembly, Fineness.SCREEN).solids();
        return (Piece.Cut)
                Section.of(solids, Pose.closed(assembly), plane).pieces().get(0);
    }

    private static PlacedPart placed(String label, Part part, Placement placement) {
        return new PlacedPart(label, part, placement);
    }

    private static Assembly assembly(PlacedPart... parts) {
        return new Assembly("boards", List.of(Group.fixed("boards", List.of(parts), List.of())), List.of());
    }
}
