package org.standwright.drawing;

import org.standwright.geom.Require;

/**
 * One line of lettering.
 *
 * @param at a point of its baseline: where it begins, its middle or where it ends
 * @param size height of the letters' body, mm
 */
public record Text(String words, Point at, double size, Weight weight, Anchor anchor, Heading heading)
        implements Shape {
    /** Which point of the baseline is given. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** Which way the letters run. */
    public enum Heading {
        LEVEL,
        /** From bottom to top, read from the right. */
        UPWARD
    }

    public Text {
        Require.named("text on a drawing", words);
        Require.positive("size of letters", size, words);
    }

    public static Text level(String words, Point at, double size, Anchor anchor) {
        return new Text(words, at, size, Weight.REGULAR, anchor, Heading.LEVEL);
    }

    public Text bold() {
        return new Text(words, at, size, Weight.BOLD, anchor, heading);
    }

    public Text upward() {
        return new Text(words, at, size, weight, anchor, Heading.UPWARD);
    }

    @Override
    public <R> R accept(ShapeVisitor<R> visitor) {
        return visitor.text(this);
    }
}
