package org.standwright.drawing.plot;

import java.util.List;
import org.standwright.geom.Require;
import org.standwright.part.Colour;

/**
 * What is done in one way: by one operation to one depth, or not by the machine at all.
 *
 * @param stroke width of its lines where they are looked at, mm
 */
public record Layer(String name, Colour colour, double stroke, List<Mark> marks) {
    private static final double STROKE = 0.35;
    private static final double HEAVY = 1.2;

    public Layer {
        Require.named("layer", name);
        Require.positive("stroke", stroke, name);
        marks = List.copyOf(marks);
    }

    /** In lines of the usual width. */
    public Layer(String name, Colour colour, List<Mark> marks) {
        this(name, colour, STROKE, marks);
    }

    /** In lines that stand out. */
    public static Layer heavy(String name, Colour colour, List<Mark> marks) {
        return new Layer(name, colour, HEAVY, marks);
    }
}
