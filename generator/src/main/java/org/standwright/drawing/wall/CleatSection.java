package org.standwright.drawing.wall;

import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.Scale;

/** A section through strip, hanger and wall, dimensioned, the room at the left. */
public final class CleatSection {
    private static final List<Scale> SCALES =
            List.of(1, 2, 3, 4, 5, 10).stream().map(Scale::new).toList();

    private CleatSection() {}

    /**
     * At the largest scale from 1:1 down at which it fits; through the first wall.
     *
     * @param width of the room on paper, mm
     * @param height of the room on paper, mm
     */
    public static Figure of(CleatWall walls, double width, double height, TextMeasure measure) {
        return SCALES.stream()
                .map(scale -> new SectionShapes(walls, scale, measure).figure())
                .filter(figure -> figure.width() <= width && figure.height() <= height)
                .findFirst()
                .orElseGet(() -> new SectionShapes(walls, SCALES.get(SCALES.size() - 1), measure).figure());
    }
}
