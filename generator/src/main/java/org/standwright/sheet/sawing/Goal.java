package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.List;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.PlacedPiece;

/**
 * What a panel is to become: a cut tree at real sizes, its blocks opened and its strips in cutting
 * order. Two goals are one only if they are the same object.
 */
sealed interface Goal {
    /** Along the sheet's length, units; a left that is 0 or less is dust. */
    int length();

    /** Across the sheet. */
    int width();

    /** @param piece as it lies when its corner is the origin */
    record Item(PlacedPiece piece) implements Goal {
        @Override
        public int length() {
            return piece.area().length();
        }

        @Override
        public int width() {
            return piece.area().width();
        }
    }

    /** What nobody asked for. */
    record Left(int length, int width) implements Goal {}

    /**
     * @param direction of the cuts between the strips
     * @param gap from each strip to the next
     */
    record Strips(Direction direction, int length, int width, int gap, List<Goal> nodes) implements Goal {
        /** Length of the cuts. */
        int along() {
            return direction == Direction.RIP ? length : width;
        }

        Edge low() {
            return direction == Direction.RIP ? Edge.Y0 : Edge.X0;
        }

        Edge high() {
            return direction == Direction.RIP ? Edge.Y1 : Edge.X1;
        }

        /** Where the strips lie. */
        List<Area> places(Area at) {
            boolean rip = direction == Direction.RIP;
            var places = new ArrayList<Area>();
            int from = 0;
            for (var node : nodes) {
                places.add(new Area(
                        rip ? at.x() : at.x() + from, rip ? at.y() + from : at.y(), node.length(), node.width()));
                from += node.extent(direction) + gap;
            }
            return places;
        }

        /** Through the panel, this far above a strip. */
        Area kerf(Area panel, Area strip, Seam.Cut cut) {
            int width = cut.to() - cut.from();
            return direction == Direction.RIP
                    ? new Area(panel.x(), strip.endY() + cut.from(), panel.length(), width)
                    : new Area(strip.endX() + cut.from(), panel.y(), width, panel.width());
        }

        Area below(Area panel, Area kerf) {
            return direction == Direction.RIP
                    ? new Area(panel.x(), panel.y(), panel.length(), kerf.y() - panel.y())
                    : new Area(panel.x(), panel.y(), kerf.x() - panel.x(), panel.width());
        }

        Area above(Area panel, Area kerf) {
            return direction == Direction.RIP
                    ? new Area(panel.x(), kerf.endY(), panel.length(), panel.endY() - kerf.endY())
                    : new Area(kerf.endX(), panel.y(), panel.endX() - kerf.endX(), panel.width());
        }
    }

    /** Size in the sense that cuts of this direction divide. */
    default int extent(Direction direction) {
        return direction == Direction.RIP ? width() : length();
    }

    /** Whether a piece reaches this edge, so that it has to be true. */
    default boolean reaches(Edge edge) {
        if (this instanceof Strips strips) {
            var nodes = strips.nodes;
            if (edge == strips.low()) {
                return nodes.get(0).reaches(edge);
            }
            return edge == strips.high()
                    ? nodes.get(nodes.size() - 1).reaches(edge)
                    : nodes.stream().anyMatch(node -> node.reaches(edge));
        }
        return this instanceof Item;
    }
}
