package org.standwright.drawing.wall;

import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.TextMeasure;

/** One wall's elevation on a sheet of paper of its own, for a file. */
public final class ElevationSheet {
    /** Room for the figure, mm, and the white around it. */
    private static final double WIDTH = 277;

    private static final double HEIGHT = 190;
    private static final double MARGIN = 10;

    private ElevationSheet() {}

    /** Titled 'Bench wall: north, 5 rows, bare area 6.75 m²'. */
    public static Drawing of(CleatWall walls, CleatedWall wall, WallLabels labels, TextMeasure measure) {
        var title = title(walls, wall);
        var figure =
                WallElevation.of(walls, wall, labels, WIDTH, HEIGHT, measure).titled(title, WIDTH / 2, measure);
        return new Drawing(
                title, figure.width() + 2 * MARGIN, figure.height() + 2 * MARGIN, List.of(figure.at(MARGIN, MARGIN)));
    }

    private static String title(CleatWall walls, CleatedWall wall) {
        long rows = wall.rows().stream().filter(row -> !row.strips().isEmpty()).count();
        return walls.design().name() + ": " + wall.wall().name() + ", " + rows + (rows == 1 ? " row" : " rows")
                + ", bare area " + walls.design().unit().area(wall.bare().size());
    }
}
