package org.standwright.export.mesh;

import org.standwright.export.Digits;
import org.standwright.geom.Vec3;

/** Points of the 1/1024 mm grid as text, in full. */
final class Coordinates {
    private Coordinates() {}

    /** With a blank between each two. */
    static void append(Vec3 point, StringBuilder text) {
        Digits.grid(point.x(), text);
        Digits.grid(point.y(), text.append(' '));
        Digits.grid(point.z(), text.append(' '));
    }
}
