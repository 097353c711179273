package org.standwright.solid;

import java.util.List;
import java.util.Optional;
import org.standwright.part.Part;

/**
 * What a part's solid is made of, on the grid: a blank and what is taken from it. Parts of one shape have one solid,
 * whatever they are called.
 */
record Shape(Prism blank, List<Prism> tools) {
    Shape {
        tools = List.copyOf(tools);
    }

    static Shape of(Part part, Fineness fineness) {
        var blank = Prism.box(
                0,
                0,
                Solid.units("length", part.length(), part.name()),
                Solid.units("width", part.width(), part.name()),
                0,
                Solid.units("thickness", part.thickness(), part.name()));
        var tools = new Tools(part, blank, fineness);
        return new Shape(
                blank,
                part.features().stream()
                        .map(feature -> feature.accept(tools))
                        .flatMap(Optional::stream)
                        .distinct()
                        .toList());
    }
}
