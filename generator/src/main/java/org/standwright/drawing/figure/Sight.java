package org.standwright.drawing.figure;

import java.util.Comparator;
import org.standwright.drawing.Point;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** Where a view is taken from, in third-angle projection: the right side stands right of the front, the top above. */
public enum Sight {
    FRONT("Front"),
    RIGHT("Right side"),
    TOP("Top");

    private final String words;

    Sight(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** A box of the assembly as it is seen, mm of the real thing. */
    public Rect project(Box3 box) {
        var a = flat(box.min());
        var b = flat(box.max());
        return new Rect(a.x(), a.y(), b.x(), b.y());
    }

    /** From the farthest to the nearest: of two boxes that do not touch, the one seen in front comes later. */
    Comparator<Box3> farthestFirst() {
        return Comparator.comparingDouble(this::nearness);
    }

    /** How near the face of a box is that looks at the person, mm: the greater, the nearer. */
    public double nearness(Box3 box) {
        return switch (this) {
            case FRONT -> -box.min().y();
            case RIGHT -> box.max().x();
            case TOP -> box.max().z();
        };
    }

    /** A point of the assembly as it is seen, mm of the real thing. */
    public Point flat(Vec3 point) {
        return switch (this) {
            case FRONT -> new Point(point.x(), point.z());
            case RIGHT -> new Point(point.y(), point.z());
            case TOP -> new Point(point.x(), point.y());
        };
    }

    /** How near the face of a box is that looks away from the person, mm. */
    public double farness(Box3 box) {
        return switch (this) {
            case FRONT -> -box.max().y();
            case RIGHT -> box.min().x();
            case TOP -> box.min().z();
        };
    }

    /** The point of the assembly that is seen at a place and is so near, mm: {@link #flat} the other way round. */
    public Vec3 lifted(double x, double y, double nearness) {
        return switch (this) {
            case FRONT -> new Vec3(x, -nearness, y);
            case RIGHT -> new Vec3(nearness, x, y);
            case TOP -> new Vec3(x, y, nearness);
        };
    }

    /** Whether the person looks along this axis, either way. */
    public boolean isAlong(Axis axis) {
        return switch (this) {
            case FRONT -> axis.unit().y() != 0;
            case RIGHT -> axis.unit().x() != 0;
            case TOP -> axis.unit().z() != 0;
        };
    }
}
