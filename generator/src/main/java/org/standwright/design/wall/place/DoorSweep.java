package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Swing.Side;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

/**
 * What the leaf of a door sweeps, seen from above: x along its wall, y out from it, mm.
 *
 * <p>It turns about the edge of its opening, at the wall's surface, from shut to its angle. Its outer corner goes round on
 * the diagonal of width and thickness; the handle may be on either face, so that the open leaf is as thick on the far side
 * too. Arcs are polygons around the circle, at most 1 part in 1000 too large (own derivation).
 */
final class DoorSweep {
    private static final double STEP = 5;

    private final Rect door;
    private final Swing swing;
    private final double angle;

    private DoorSweep(Rect door, Swing swing) {
        this.door = door;
        this.swing = swing;
        // at 180° it lies against the wall
        this.angle = Math.min(swing.angle(), 180);
    }

    /** Convex pieces that cover it. */
    static List<List<Vec2>> of(Rect door, Swing swing) {
        var sweep = new DoorSweep(door, swing);
        return List.of(sweep.sector(), sweep.openLeaf());
    }

    private List<Vec2> sector() {
        double radius = StrictMath.hypot(door.width(), swing.thickness());
        int steps = (int) Math.max(1, Math.ceil(angle / STEP));
        double step = angle / steps;
        double outside = radius / StrictMath.cos(StrictMath.toRadians(step / 2));
        var corners = new ArrayList<Vec2>();
        corners.add(hinge());
        corners.add(hinge().plus(leaf(0).times(radius)));
        for (int i = 0; i < steps; i++) {
            corners.add(hinge().plus(leaf((i + 0.5) * step).times(outside)));
        }
        corners.add(hinge().plus(leaf(angle).times(radius)));
        return corners;
    }

    private List<Vec2> openLeaf() {
        var along = leaf(angle).times(door.width());
        var beyond = leaf(angle + 90).times(swing.thickness());
        return List.of(hinge(), hinge().plus(along), hinge().plus(along).plus(beyond), hinge().plus(beyond));
    }

    private Vec2 hinge() {
        return new Vec2(swing.hinges() == Side.LEFT ? door.x0() : door.x1(), 0);
    }

    /** Where the leaf points from its hinge, length 1. */
    private Vec2 leaf(double degrees) {
        double cos = StrictMath.cos(StrictMath.toRadians(degrees));
        return new Vec2(swing.hinges() == Side.LEFT ? cos : -cos, StrictMath.sin(StrictMath.toRadians(degrees)));
    }
}
