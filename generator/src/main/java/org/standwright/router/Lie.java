package org.standwright.router;

import java.util.function.UnaryOperator;
import org.standwright.geom.Vec2;

/**
 * How a part lies on a board: with its show face up or turned over about its x axis, then turned by quarter turns to the
 * left, then shifted. It takes points of the part's frame, seen from its show face, to the board's.
 *
 * @param quarters 0 to 3
 */
public record Lie(boolean overturned, int quarters, Vec2 shift) implements UnaryOperator<Vec2> {
    public Lie {
        if (quarters < 0 || quarters > 3) {
            throw new IllegalArgumentException("a part is turned by " + quarters + " quarters; say 0 to 3.");
        }
    }

    @Override
    public Vec2 apply(Vec2 ofPart) {
        double x = ofPart.x();
        double y = overturned ? -ofPart.y() : ofPart.y();
        var turned = switch (quarters) {
            case 0 -> new Vec2(x, y);
            case 1 -> new Vec2(-y, x);
            case 2 -> new Vec2(-x, -y);
            default -> new Vec2(y, -x);
        };
        return turned.plus(shift);
    }

    /** The same, shifted further. */
    public Lie moved(Vec2 by) {
        return new Lie(overturned, quarters, shift.plus(by));
    }
}
