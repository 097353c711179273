package org.standwright.viewer.hand;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.text.Text;
import org.standwright.viewer.hand.change.Thing;

/** A thing on the screen, with as much of its name on it as there is room for. */
final class ThingNode extends Label {
    private static final PseudoClass PICKED = PseudoClass.getPseudoClass("picked");
    /** Of a line of text, letters and what is above and below. */
    private static final double LINE = 1.25;

    ThingNode() {
        setManaged(false);
        setMouseTransparent(true);
        setAccessibleRole(AccessibleRole.TEXT);
    }

    void show(Thing thing, Scale scale, boolean isPicked) {
        if (!getStyleClass().contains(thing.look())) {
            getStyleClass().setAll("thing", thing.look());
        }
        setAccessibleText(thing.words());
        pseudoClassStateChanged(PICKED, isPicked);
        var seen = scale.seen(thing.area());
        double x = Math.round(seen.getMinX());
        double y = Math.round(seen.getMinY());
        resizeRelocate(x, y, Math.max(1, Math.round(seen.getMaxX()) - x), Math.max(1, Math.round(seen.getMaxY()) - y));
        setText(fitting(thing));
    }

    private String fitting(Thing thing) {
        double size = getFont().getSize();
        if (thing.title().isEmpty() || getHeight() < LINE * size) {
            return "";
        }
        var both = thing.detail().isEmpty() ? thing.title() : thing.title() + "   " + thing.detail();
        if (fits(both)) {
            return both;
        }
        // a name is cut short rather than left out, a number is not
        boolean isName =
                getWidth() > 2.5 * size && Character.isLetter(thing.title().charAt(0));
        return fits(thing.title()) || isName ? thing.title() : "";
    }

    private boolean fits(String words) {
        var measured = new Text(words);
        measured.setFont(getFont());
        return measured.getLayoutBounds().getWidth() + getFont().getSize() / 2 < getWidth();
    }
}
