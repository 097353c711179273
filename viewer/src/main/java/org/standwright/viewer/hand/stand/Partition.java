package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Differences;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Move;
import org.standwright.viewer.hand.change.Tape;

/**
 * The partition between two bays. One gets as much wider as the other gets narrower; all others stay as they are, and one
 * bay goes on taking what is left where one did.
 *
 * @param text of the file
 * @param left place of the bay on its left, from the left
 */
record Partition(String text, Bays bays, int left, Tape tape) implements Handle {
    /** No bay in a file may be narrower, mm. */
    private static final double LEAST = 100;

    @Override
    public String key() {
        return bays.pointer() + "/partition/" + left;
    }

    @Override
    public String words() {
        return "the partition between " + bay(left).name() + " and "
                + bay(left + 1).layout().name();
    }

    @Override
    public Rect area() {
        return area(0);
    }

    private Rect area(double right) {
        var here = bay(left).layout().opening();
        var next = bay(left + 1).layout().opening();
        return new Rect(here.x1() + right, here.y0(), next.x0() + right, here.y1());
    }

    @Override
    public Way way() {
        return Way.LEFT_AND_RIGHT;
    }

    @Override
    public Move dragged(double right, double up) {
        double width = bay(left).width();
        return to(right == 0 ? width : snapped(width + right));
    }

    @Override
    public Move nudged(int right, int up) {
        return dragged(right * tape.step(), 0);
    }

    /** On a mark of the tape is the width that is written. */
    private double snapped(double width) {
        return givesLeft() ? tape.snapped(width) : both() - tape.snapped(both() - width);
    }

    private Move to(double wanted) {
        double now = bay(left).width();
        double width = Math.max(Math.min(LEAST, now), Math.min(Math.max(both() - LEAST, now), wanted));
        var sizes = List.of(
                bay(left).name() + ": " + tape.words(width), bay(left + 1).name() + ": " + tape.words(both() - width));
        return new Move(text(width), sizes, area(width - now));
    }

    private String text(double width) {
        if (Grid.same(width, bay(left).width())) {
            return text;
        }
        ArrayNode after = bays.written().deepCopy();
        if (givesLeft()) {
            give(after, left, width);
        }
        if (givesRight()) {
            give(after, left + 1, both() - width);
        }
        return Differences.written(text, bays.pointer(), bays.written(), after);
    }

    private void give(ArrayNode list, int bay, double width) {
        ((ObjectNode) list.get(bay(bay).at())).set("width", tape.written(width));
    }

    /** But where the left bay alone takes what is left. */
    private boolean givesLeft() {
        return bay(left).hasWidth() || !bay(left + 1).hasWidth() || othersShare();
    }

    private boolean givesRight() {
        return bay(left + 1).hasWidth() || othersShare();
    }

    /** Whether bays farther off take what is left, which stays the same. */
    private boolean othersShare() {
        return bays.across().stream()
                .filter(bay -> !bay.hasWidth())
                .anyMatch(bay -> bay != bay(left) && bay != bay(left + 1));
    }

    private Bays.One bay(int at) {
        return bays.across().get(at);
    }

    private double both() {
        return bay(left).width() + bay(left + 1).width();
    }
}
