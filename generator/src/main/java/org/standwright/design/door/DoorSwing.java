package org.standwright.design.door;

import org.standwright.design.built.DoorLayout;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * Where a door reaches when it opens. It turns about the edge between its outer face and its hinge side: a butt hinge
 * has its pin there, a concealed hinge moves the door so that it stays within its own front's width. So an open door
 * stands before its own front only, and clears whatever opens beside it.
 */
public final class DoorSwing {
    private final Frame frame;

    public DoorSwing(Frame frame) {
        this.frame = frame;
    }

    /** The door opened by 90°. */
    public Box3 open(DoorLayout door) {
        var front = door.front();
        double thick = thickness();
        double x = door.hung() == Side.LEFT ? front.x0() : front.x1() - thick;
        return new Box3(
                new Vec3(x, outerFace() - front.width(), front.y0()), new Vec3(x + thick, outerFace(), front.y1()));
    }

    /** The box around all that the door sweeps between closed and 90°. */
    public Box3 swept(DoorLayout door) {
        var front = door.front();
        double reach = front.width() + overreach(door);
        double x = door.hung() == Side.LEFT ? front.x0() : front.x1() - reach;
        return new Box3(
                new Vec3(x, outerFace() - reach, front.y0()),
                new Vec3(x + reach, outerFace() + thickness(), front.y1()));
    }

    /** How far the inner corner of the closing edge swings out beyond the closed door, mm: √(w² + t²) - w. */
    public double overreach(DoorLayout door) {
        double width = door.front().width();
        return Math.hypot(width, thickness()) - width;
    }

    private double thickness() {
        return frame.design().drawers().front().material().thickness();
    }

    private double outerFace() {
        return DrawerFit.boxFront(frame) - thickness();
    }
}
