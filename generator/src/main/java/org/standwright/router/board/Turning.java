package org.standwright.router.board;

import java.util.function.UnaryOperator;
import org.standwright.geom.Vec2;

/** A board turned over side to side, about its long middle line: x stays, y counts from the other side. */
record Turning(double width) implements UnaryOperator<Vec2> {
    @Override
    public Vec2 apply(Vec2 at) {
        return new Vec2(at.x(), width - at.y());
    }
}
