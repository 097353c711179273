package org.standwright.drawing.figure;

import java.util.Comparator;
import org.standwright.drawing.Point;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** Where a view is taken from, in third-angle projection: the right side stands right of the front, the top above. */
enum Sight {
    FRONT("Front"),
    RIGHT("Right side"),
    TOP("Top");

    private final String words;

    Sight(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** A box of the assembly as it is seen, mm of the real thing. */
    Rect project(Box3 box) {
        var a = flat(box.min());
        var b = flat(box.max());
        return new Rect(a.x(), a.y(), b.x(), b.y());
    }

    /** From the farthest to the nearest: of two boxes that do not touch, the one seen in front comes later. */
    Comparator<Box3> farthestFirst() {
        return Comparator.comparingDouble(this::nearness);
    }

    private double nearness(Box3 box) {
        return switch (this) {
            case FRONT -> -box.min().y();
            case RIGHT -> box.max().x();
            case TOP -> box.max().z();
        };
    }

    /** A point of the assembly as it is seen, mm of the real thing. */
    Point flat(Vec3 point) {
        return switch (this) {
            case FRONT -> new Point(point.x(), point.z());
            case RIGHT -> new Point(point.y(), point.z());
            case TOP -> new Point(point.x(), point.y());
        };
    }
}
