package org.standwright.cutlist;

import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.part.Edge;

/** What the sides of a board are called once it stands in its place. */
record Sides(Placement placement) {
    /** Where the board's origin is and where it looks, so that both can be found on a loose board. */
    String reference() {
        return "x from the " + edge(Edge.X0) + ", y from the " + edge(Edge.Y0) + ", show face "
                + towards(placement.through());
    }

    /** 'lower end', 'rear edge'. */
    String edge(Edge edge) {
        var axis = edge.isEnd() ? placement.along() : placement.across();
        return start(edge.isFar() ? axis.opposite() : axis) + (edge.isEnd() ? " end" : " edge");
    }

    private static String start(Axis axis) {
        return switch (axis) {
            case X_PLUS -> "left";
            case X_MINUS -> "right";
            case Y_PLUS -> "front";
            case Y_MINUS -> "rear";
            case Z_PLUS -> "lower";
            case Z_MINUS -> "upper";
        };
    }

    private static String towards(Axis axis) {
        return switch (axis) {
            case X_PLUS -> "to the right";
            case X_MINUS -> "to the left";
            case Y_PLUS -> "to the rear";
            case Y_MINUS -> "to the front";
            case Z_PLUS -> "up";
            case Z_MINUS -> "down";
        };
    }
}
