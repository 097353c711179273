package org.standwright.solid;

import java.util.List;
import java.util.Optional;
import org.standwright.part.Part;

/**
 * What a part's solid is made of, on the grid: a blank and what is taken from it. Equal workpieces have one solid,
 * whatever they are called.
 */
record Workpiece(Prism blank, List<Prism> tools) {
    Workpiece {
        tools = List.copyOf(tools);
    }

    static Workpiece of(Part part, Fineness fineness) {
        var blank = Prism.box(
                0,
                0,
                Solid.units("length", part.length(), part.name()),
                Solid.units("width", part.width(), part.name()),
                0,
                Solid.units("thickness", part.thickness(), part.name()));
        var tools = new Tools(part, blank, fineness);
        return new Workpiece(
                blank,
                part.features().stream()
                        .map(feature -> feature.accept(tools))
                        .flatMap(Optional::stream)
                        .distinct()
                        .toList());
    }
}
