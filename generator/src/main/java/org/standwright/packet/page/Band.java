package org.standwright.packet.page;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.Shape;
import org.standwright.drawing.figure.Figure;

/**
 * A strip across a page that no page break divides. Its frame: x from the page's left margin, y = 0 at its upper edge,
 * so that everything in it lies at y from {@code -height} to 0.
 */
public record Band(double height, List<Shape> shapes) {
    public Band {
        shapes = List.copyOf(shapes);
    }

    public static Band gap(double height) {
        return new Band(height, List.of());
    }

    /** A figure in the middle of a band this wide. */
    public static Band of(Figure figure, double width) {
        return new Band(figure.height(), List.of(figure.at((width - figure.width()) / 2, -figure.height())));
    }

    /** Figures side by side, each in the middle of its share of a band this wide, their upper edges in line. */
    static Band row(List<Figure> figures, double width) {
        double share = width / figures.size();
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < figures.size(); i++) {
            var figure = figures.get(i);
            shapes.add(figure.at(i * share + (share - figure.width()) / 2, -figure.height()));
        }
        return new Band(figures.stream().mapToDouble(Figure::height).max().orElse(0), shapes);
    }
}
