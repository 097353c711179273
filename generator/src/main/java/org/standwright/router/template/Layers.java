package org.standwright.router.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.part.Colour;

/** Layers that marks are put on, in the order in which they are first used. */
final class Layers {
    private final Map<String, List<Mark>> marks = new LinkedHashMap<>();
    private final Map<String, Colour> colours = new LinkedHashMap<>();

    void add(String layer, Colour colour, Mark mark) {
        colours.putIfAbsent(layer, colour);
        marks.computeIfAbsent(layer, key -> new ArrayList<>()).add(mark);
    }

    Stream<Mark> marks() {
        return marks.values().stream().flatMap(List::stream);
    }

    List<Layer> all() {
        return marks.entrySet().stream()
                .map(entry -> new Layer(entry.getKey(), colours.get(entry.getKey()), entry.getValue()))
                .toList();
    }
}
