package org.standwright.sheet.sawing;

import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut.Direction;

/** The four edges of a panel. */
record Rims(Rim x0, Rim x1, Rim y0, Rim y1) {
    Rim at(Edge edge) {
        return switch (edge) {
            case X0 -> x0;
            case X1 -> x1;
            case Y0 -> y0;
            case Y1 -> y1;
        };
    }

    Rims with(Edge edge, Rim rim) {
        return new Rims(
                edge == Edge.X0 ? rim : x0,
                edge == Edge.X1 ? rim : x1,
                edge == Edge.Y0 ? rim : y0,
                edge == Edge.Y1 ? rim : y1);
    }

    /** The panel whose goal lies here. */
    Area around(Area goal) {
        return new Area(
                goal.x() - x0.over(),
                goal.y() - y0.over(),
                x0.over() + goal.length() + x1.over(),
                y0.over() + goal.width() + y1.over());
    }

    /** Length of a cut through the panel of this goal. */
    int along(Goal goal, Direction direction) {
        return direction == Direction.RIP
                ? x0.over() + goal.length() + x1.over()
                : y0.over() + goal.width() + y1.over();
    }

    boolean areClean() {
        return x0.over() == 0 && x1.over() == 0 && y0.over() == 0 && y1.over() == 0;
    }

    /** Direction of a cut along this edge. */
    static Direction along(Edge edge) {
        return edge.isEnd() ? Direction.CROSSCUT : Direction.RIP;
    }
}
