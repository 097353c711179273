package org.standwright.viewer.scene.around;

import java.util.Optional;
import org.standwright.design.built.CleatWall;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** Where a figure stands: beside what it is shown with, and hiding none of it from the front. */
final class Standing {
    /** Between the figure and what it stands beside, mm. */
    private static final double GAP = 150;

    /** Between a wall and the figure before it, mm. */
    private static final double BEFORE_WALL = 500;

    private Standing() {}

    /** On the left, before the front, clear of the boards' way. */
    static Figure by(Box3 furniture, Optional<FeedWay> feed, Figure figure) {
        double front = furniture.min().y() - 2 * GAP;
        double clear = feed.filter(way -> way.box().min().x() < furniture.min().x())
                .map(way -> way.box().min().y() - figure.box().max().y())
                .orElse(front);
        return figure.at(new Vec3(furniture.min().x() - GAP - figure.halfWidth(), Math.min(front, clear), 0));
    }

    /** Before the wall at its end, on the left if no other wall is there, else on the right, else before everything. */
    static Figure by(CleatWall walls, Figure figure) {
        var box = Box3.around(walls.walls().stream().map(WallFace::box).toList());
        double aside = GAP + figure.halfWidth();
        double y = box.max().y() - BEFORE_WALL;
        if (walls.walls().get(0).frame().right() == Axis.X_PLUS) {
            return figure.at(new Vec3(box.min().x() - aside, y, 0));
        }
        if (walls.walls().get(walls.walls().size() - 1).frame().right() == Axis.X_PLUS) {
            return figure.at(new Vec3(box.max().x() + aside, y, 0));
        }
        return figure.at(new Vec3(box.centre().x(), box.min().y() - BEFORE_WALL, 0));
    }
}
