package org.standwright.drawing;

import java.util.List;
import org.standwright.geom.Require;

/**
 * One sheet of paper with what is drawn on it, in the paper's frame.
 *
 * @param title what it shows, for the reader of a file
 * @param width of the paper, mm
 * @param height of the paper, mm
 */
public record Drawing(String title, double width, double height, List<Shape> shapes) {
    public Drawing {
        Require.named("drawing", title);
        Require.positive("paper width", width, title);
        Require.positive("paper height", height, title);
        shapes = List.copyOf(shapes);
    }
}
