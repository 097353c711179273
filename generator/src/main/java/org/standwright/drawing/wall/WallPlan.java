package org.standwright.drawing.wall;

import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** The walls seen from above, the person's side below: what stands before them, how doors open, how far holders stand out. */
public final class WallPlan {
    /** Shown of the room before a wall at least, mm. */
    private static final double BEFORE = 300;

    private WallPlan() {}

    /** At the largest scale of the series at which it fits. */
    public static Figure of(CleatWall walls, double width, double height, TextMeasure measure) {
        var size = around(walls).size();
        return Scale.largest(
                new Scale.Size(size.x(), size.y()),
                width,
                height,
                scale -> List.of(new PlanShapes(walls, scale, measure).figure()));
    }

    private static Box3 around(CleatWall walls) {
        return Box3.around(walls.walls().stream()
                .map(wall -> wall.frame()
                        .apply(new Box3(
                                new Vec3(0, -BEFORE, 0),
                                new Vec3(wall.outline().bounds().x1(), 0, 0))))
                .toList());
    }
}
