package org.standwright.viewer.hand.change;

import java.util.List;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

/**
 * Something that is only seen in a picture.
 *
 * @param points in turn, in the frame of the picture, mm
 * @param isArea whether it is filled, else a line
 * @param look style class
 */
public record Mark(List<Vec2> points, boolean isArea, String look) {
    public Mark {
        points = List.copyOf(points);
    }

    public static Mark area(Rect area, String look) {
        return new Mark(
                List.of(
                        new Vec2(area.x0(), area.y0()),
                        new Vec2(area.x1(), area.y0()),
                        new Vec2(area.x1(), area.y1()),
                        new Vec2(area.x0(), area.y1())),
                true,
                look);
    }

    public static Mark line(double x0, double y0, double x1, double y1, String look) {
        return new Mark(List.of(new Vec2(x0, y0), new Vec2(x1, y1)), false, look);
    }
}
