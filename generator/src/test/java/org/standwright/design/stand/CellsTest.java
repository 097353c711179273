package org.standwright.design.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/** The judge of collisions, judged. */
class CellsTest {
    private static final Part BOARD = Part.blank("board", new Material("ply", 18, 680, Grain.NONE), 600, 400);

    @Test
    void keepEveryBitOfWoodThatCrossingChannelsLeave() {
        var cells = cells(Channel.along(Face.SHOW, 100, 118, 600, 9), Channel.across(Face.SHOW, 200, 218, 400, 6));

        assertThat(volume(cells)).isCloseTo(600 * 400 * 18 - 18 * 600 * 9 - 18 * 400 * 6 + 18 * 18 * 6, within(1e-6));
    }

    @Test
    void letASmallerPlateIntoAPocketButNotIntoItsRoundCorners() {
        var cells = cells(Pocket.blind(Face.SHOW, new Rect(100, 100, 300, 200), 10, 6, "plate"));

        assertThat(into(cells, new Box3(new Vec3(103, 103, 12), new Vec3(297, 197, 20))))
                .isLessThanOrEqualTo(0);
        assertThat(into(cells, new Box3(new Vec3(100, 110, 12), new Vec3(300, 190, 20))))
                .isLessThanOrEqualTo(0);
        assertThat(into(cells, new Box3(new Vec3(100, 100, 12), new Vec3(300, 200, 20))))
                .isGreaterThan(2);
        assertThat(into(cells, new Box3(new Vec3(103, 103, 11.9), new Vec3(297, 197, 20))))
                .isCloseTo(0.1, within(1e-9));
    }

    @Test
    void openANotchSquareWhereItReachesAnEdge() {
        var cells = cells(Pocket.through(new Rect(0, 150, 40, 250), 15, "notch"));

        assertThat(into(cells, new Box3(new Vec3(-5, 150, 0), new Vec3(25, 250, 18))))
                .isLessThanOrEqualTo(0);
        assertThat(into(cells, new Box3(new Vec3(-5, 150, 0), new Vec3(39, 250, 18))))
                .isGreaterThan(2);
    }

    @Test
    void letASquareBoltOfTheHolesDiagonalIntoAnEdge() {
        var cells = cells(new EdgeHole(Edge.Y1, 300, 9, 10, 50, "bolt"));
        double half = 5 * Math.sqrt(0.5);

        assertThat(into(cells, new Box3(new Vec3(300 - half, 350, 9 - half), new Vec3(300 + half, 410, 9 + half))))
                .isLessThan(1e-9);
        assertThat(into(cells, new Box3(new Vec3(299, 349, 8), new Vec3(301, 410, 10))))
                .isCloseTo(1, within(1e-9));
    }

    private static List<Box3> cells(Feature... features) {
        return Cells.of(
                new PlacedPart("board", BOARD.with(features), new Placement(Axis.X_PLUS, Axis.Y_PLUS, Vec3.ZERO)));
    }

    private static double into(List<Box3> cells, Box3 box) {
        return Cells.penetration(cells, List.of(box));
    }

    private static double volume(List<Box3> cells) {
        return cells.stream()
                .map(Box3::size)
                .mapToDouble(size -> size.x() * size.y() * size.z())
                .sum();
    }
}
