package org.standwright.drawing.plot;

import java.util.List;
import org.standwright.geom.Require;
import org.standwright.part.Colour;

/** What is done in one way: by one operation to one depth, or not by the machine at all. */
public record Layer(String name, Colour colour, List<Mark> marks) {
    public Layer {
        Require.named("layer", name);
        marks = List.copyOf(marks);
    }
}
