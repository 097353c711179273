package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Edge;

/** Which edges of a part are covered, and with what. */
final class BandNotes {
    private BandNotes() {}

    /** One line an edging: 'banded with birch tape: front edge, left end'. */
    static List<String> of(Bands bands, Sides sides) {
        var edges = new LinkedHashMap<Banding, List<String>>();
        for (var edge : Edge.values()) {
            bands.on(edge)
                    .ifPresent(banding -> edges.computeIfAbsent(banding, first -> new ArrayList<>())
                            .add(sides.edge(edge)));
        }
        return edges.entrySet().stream()
                .map(entry -> "banded with " + entry.getKey().name() + ": " + words(entry.getValue()))
                .toList();
    }

    private static String words(List<String> edges) {
        return edges.size() == Edge.values().length ? "all four edges" : String.join(", ", edges);
    }
}
