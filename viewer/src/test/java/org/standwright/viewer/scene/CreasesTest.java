package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.Fineness;
import org.standwright.solid.Solids;

class CreasesTest {
    private static final Part BOARD = Part.blank("shelf", new Material("board", 18, 680, Grain.ALONG_LENGTH), 400, 300);

    @Test
    void areTheTwelveEdgesOfABoardWithoutTheDiagonalsOfItsFaces() {
        var solid = Solids.of(BOARD, Fineness.SCREEN);

        assertThat(Creases.of(solid).count()).isEqualTo(12);
    }

    @Test
    void areTheTwoRimsOfAHoleButNotTheSidesOfItsPolygon() {
        var drilled = Solids.of(BOARD.with(Hole.through(100, 100, 20, "cable")), Fineness.SCREEN);

        assertThat(Creases.of(drilled).count()).isEqualTo(12 + 2 * Fineness.SCREEN.sides(10));
    }

    @Test
    void areNotTheSidesOfTheSmallestPolygonEither() {
        var drilled = Solids.of(BOARD.with(Hole.through(100, 100, 2, "pin")), Fineness.SCREEN);

        assertThat(Creases.of(drilled).count()).isEqualTo(12 + 2 * 12);
    }

    @Test
    void becomeOneLineOrFourSidesOfABarEach() {
        var solid = Solids.of(BOARD, Fineness.SCREEN);
        var creases = Creases.of(solid);

        assertThat(EdgeMesh.lines(solid, creases).getFaces().size() / 6).isEqualTo(12);
        assertThat(EdgeMesh.bars(solid, creases, 2).getFaces().size() / 6).isEqualTo(12 * 8);
    }

    @Test
    void makeBarsThatStandOutByHalfTheirWidth() {
        var solid = Solids.of(BOARD, Fineness.SCREEN);
        var points = EdgeMesh.bars(solid, Creases.of(solid), 4).getPoints().toArray(null);

        for (int axis = 0; axis < 3; axis++) {
            double size = new double[] {400, 300, 18}[axis];
            for (int i = axis; i < points.length; i += 3) {
                assertThat(Math.min(Math.abs(points[i]), Math.abs(points[i] - size)))
                        .isEqualTo(2);
            }
        }
    }
}
