package org.standwright.viewer.hand.stand;

import java.util.List;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Differences;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Move;

/**
 * What lies between two cells of a column: the gap between two fronts, or the divider between two openings. One gets as
 * much higher as the other gets lower.
 *
 * @param text of the file
 * @param upper place of the cell above it, from the top
 */
record Gap(String text, Bays.One bay, int upper) implements Handle {
    /** No front or opening in a file may be lower, mm. */
    private static final double LEAST = 40;

    @Override
    public String key() {
        return bay.pointer() + "/gap/" + upper;
    }

    @Override
    public String words() {
        var above = bay.fronts().get(upper);
        var below = bay.fronts().get(upper + 1);
        return isBetweenDrawers()
                ? "the gap between " + above.name() + " and " + below.title()
                : "the divider between " + above.name() + " and " + below.name();
    }

    private boolean isBetweenDrawers() {
        var cells = bay.column().cells();
        return cells.get(upper).isDrawer() && cells.get(upper + 1).isDrawer();
    }

    @Override
    public Rect area() {
        return area(0);
    }

    private Rect area(double lower) {
        var opening = bay.layout().opening();
        double from = bay.fronts().get(upper + 1).area().y1();
        double to = bay.fronts().get(upper).area().y0();
        double middle = (from + to) / 2 - lower;
        double half = Math.max(0.5, (to - from) / 2);
        return new Rect(opening.x0(), middle - half, opening.x1(), middle + half);
    }

    @Override
    public Way way() {
        return Way.UP_AND_DOWN;
    }

    @Override
    public Move dragged(double right, double up) {
        return to(up == 0 ? height(upper) : bay.column().snapped(upper, height(upper) - up));
    }

    @Override
    public Move nudged(int right, int up) {
        return dragged(0, up * bay.column().tape().step());
    }

    private Move to(double wanted) {
        double both = height(upper) + height(upper + 1);
        double height =
                Math.max(Math.min(LEAST, height(upper)), Math.min(Math.max(both - LEAST, height(upper)), wanted));
        var tape = bay.column().tape();
        var sizes = List.of(
                bay.fronts().get(upper).name() + ": " + tape.words(height),
                bay.fronts().get(upper + 1).name() + ": " + tape.words(both - height));
        return new Move(text(height), sizes, area(height - height(upper)));
    }

    private String text(double height) {
        if (Grid.same(height, height(upper))) {
            return text;
        }
        var column = bay.column();
        return Differences.written(
                text, bay.pointer() + "/contents", column.contents(), column.with(column.moved(upper, height)));
    }

    private double height(int cell) {
        return bay.column().cells().get(cell).height();
    }
}
