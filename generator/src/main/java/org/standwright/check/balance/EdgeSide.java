package org.standwright.check.balance;

import org.standwright.check.balance.statics.TippingEdge;
import org.standwright.design.kit.Side;

/** Which side of a stand a tipping edge runs along, if aslant. */
final class EdgeSide {
    private EdgeSide() {}

    static Side of(TippingEdge edge) {
        var normal = edge.normal();
        if (Math.abs(normal.y()) >= Math.abs(normal.x())) {
            return normal.y() < 0 ? Side.FRONT : Side.BACK;
        }
        return normal.x() < 0 ? Side.LEFT : Side.RIGHT;
    }

    static String word(TippingEdge edge) {
        return word(of(edge));
    }

    static String word(Side side) {
        return switch (side) {
            case FRONT -> "front";
            case RIGHT -> "right";
            case BACK -> "back";
            case LEFT -> "left";
        };
    }
}
