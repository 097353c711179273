package org.standwright.drawing.figure;

import org.standwright.drawing.Point;

/** Which side of a view its dimensions stand on. */
public enum Side {
    BELOW,
    ABOVE,
    LEFT,
    RIGHT;

    boolean isLevel() {
        return this == BELOW || this == ABOVE;
    }

    /** The point at {@code along} the view's edge and {@code away} from it. */
    Point at(double edge, double along, double away) {
        return switch (this) {
            case BELOW -> new Point(along, edge - away);
            case ABOVE -> new Point(along, edge + away);
            case LEFT -> new Point(edge - away, along);
            case RIGHT -> new Point(edge + away, along);
        };
    }
}
