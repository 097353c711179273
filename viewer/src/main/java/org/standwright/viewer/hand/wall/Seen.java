package org.standwright.viewer.hand.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Rect;

/**
 * One wall in the picture.
 *
 * @param left where its left end is seen, mm
 */
public record Seen(CleatedWall wall, double left) {
    /** Between two walls, mm. */
    private static final double BETWEEN = 250;

    static List<Seen> of(CleatWall walls) {
        var seen = new ArrayList<Seen>();
        double left = 0;
        for (var wall : walls.walls()) {
            seen.add(new Seen(wall, left));
            left += wall.outline().bounds().x1() + BETWEEN;
        }
        return seen;
    }

    /** The box around it in the picture. */
    public Rect bounds() {
        return shown(wall.outline().bounds());
    }

    /** An area of the wall in the picture. */
    public Rect shown(Rect area) {
        return new Rect(left + area.x0(), area.y0(), left + area.x1(), area.y1());
    }
}
