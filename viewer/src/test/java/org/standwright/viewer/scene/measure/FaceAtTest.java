package org.standwright.viewer.scene.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.geom.Axis;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.solid.Fineness;
import org.standwright.solid.Solid;
import org.standwright.solid.Solids;
import org.standwright.viewer.scene.Sample;

class FaceAtTest {
    private static final double GRID = 1.0 / Solid.PER_MM;
    private static final Part BOARD = Part.blank("shelf", new Material("board", 18, 680, Grain.NONE), 400, 300);

    @Test
    void aBoardHasSixFaces() {
        var solid = Solids.of(BOARD, Fineness.SCREEN);

        var faces = faces(solid);

        assertThat(faces)
                .hasSize(6)
                .allSatisfy(face -> assertThat(face.triangles()).hasSize(2));
        assertThat(Picked.outermost(solid, Axis.X_PLUS)).isInstanceOfSatisfying(FlatFace.class, face -> {
            assertThat(face.normal()).isEqualTo(Axis.X_PLUS.unit());
            assertThat(face.at()).isEqualTo(400);
        });
    }

    @Test
    void aFaceGoesOnAroundTheHolesInIt() {
        var solid = Solids.of(BOARD.with(Hole.through(100, 100, 20, "cable")), Fineness.SCREEN);

        double area = Picked.largest(solid, Axis.Z_PLUS).triangles().stream()
                        .mapToDouble(triangle -> Products.length(triangle.normal()))
                        .sum()
                / 2;

        assertThat(area).isCloseTo(400 * 300 - Math.PI * 100, within(0.1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.5, 3, 8, 20, 35, 64, 150, 280})
    void theWallOfAHoleIsOneFaceOfItsDiameterAndDepth(double diameter) {
        var solid = Solids.of(
                BOARD.with(Hole.blind(org.standwright.part.Face.SHOW, 200, 150, diameter, 12, "hole")),
                Fineness.SCREEN);

        var hole = Picked.hole(solid, new Vec3(200, 150, 12));

        assertThat(faces(solid)).hasSize(8);
        assertThat(hole.kind()).isEqualTo(RoundFace.Kind.HOLE);
        assertThat(hole.diameter()).isCloseTo(diameter, within(GRID));
        assertThat(hole.depth()).isEqualTo(12);
        assertThat(List.of(hole.from().z(), hole.to().z())).containsExactlyInAnyOrder(6.0, 18.0);
        assertThat(hole.from().x()).isCloseTo(200, within(GRID));
        assertThat(hole.from().y()).isCloseTo(150, within(GRID));
    }

    @Test
    void aCounterboredHoleHasTwoWalls() {
        var wide = new Recess.Counterbore(20, 6);
        var solid = Solids.of(BOARD.with(Hole.through(200, 150, 8, "bolt").with(wide)), Fineness.SCREEN);

        assertThat(Picked.hole(solid, new Vec3(200, 150, 6)).diameter()).isCloseTo(8, within(GRID));
        assertThat(Picked.hole(solid, new Vec3(200, 150, 6)).depth()).isEqualTo(12);
        assertThat(Picked.hole(solid, new Vec3(200, 150, 15)).diameter()).isCloseTo(20, within(GRID));
        assertThat(Picked.hole(solid, new Vec3(200, 150, 15)).depth()).isEqualTo(6);
    }

    @Test
    void theRoundedCornersOfAPocketAreNoHole() {
        var solid = Solids.of(BOARD.with(Pocket.through(new Rect(100, 100, 200, 160), 10, "opening")), Fineness.SCREEN);

        assertThat(faces(solid)).allSatisfy(face -> assertThat(face).isInstanceOf(FlatFace.class));
    }

    @Test
    void findsEveryRoundHoleOfAStand() {
        var parts = Sample.stand("planer-stand").solids().solids();
        int holes = 0;
        for (var placed : parts) {
            var walls = all(placed.solid());
            for (var feature : placed.part().part().features()) {
                if (feature instanceof Hole hole && hole.recess().isEmpty()) {
                    holes++;
                    assertThat(walls).as("%s in %s", hole, placed.label()).anyMatch(wall -> fits(wall, hole));
                }
            }
        }
        assertThat(holes).isGreaterThan(100);
    }

    private static boolean fits(Face face, Hole hole) {
        return face instanceof RoundFace wall
                && wall.kind() == RoundFace.Kind.HOLE
                && Math.abs(wall.diameter() - hole.diameter()) <= 2 * GRID
                && Math.abs(wall.from().x() - hole.x()) <= 2 * GRID
                && Math.abs(wall.from().y() - hole.y()) <= 2 * GRID;
    }

    private static List<Face> all(Solid solid) {
        var seen = new HashSet<Triangle>();
        var faces = new ArrayList<Face>();
        for (int i = 0; i < solid.triangleCount(); i++) {
            if (!seen.contains(Triangle.of(solid, i))) {
                var face = FaceAt.of(solid, i);
                seen.addAll(face.triangles());
                faces.add(face);
            }
        }
        return faces;
    }

    private static List<Face> faces(Solid solid) {
        return IntStream.range(0, solid.triangleCount())
                .mapToObj(triangle -> FaceAt.of(solid, triangle))
                .distinct()
                .toList();
    }
}
