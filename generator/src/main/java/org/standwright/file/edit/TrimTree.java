package org.standwright.file.edit;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.design.kit.Trim;

/** A trim as a file writes it: the one that most edges have, and others where they differ. */
final class TrimTree {
    private TrimTree() {}

    static ObjectNode of(Trim trim) {
        var sides = new LinkedHashMap<String, Double>();
        sides.put("left", trim.left());
        sides.put("right", trim.right());
        sides.put("bottom", trim.bottom());
        sides.put("top", trim.top());
        var all = List.copyOf(sides.values());
        // the smallest of those that are equally frequent: a maker trims more where a board is worse
        double usual = all.stream()
                .min(Comparator.comparingLong((Double side) -> -count(all, side))
                        .thenComparing(side -> side))
                .orElseThrow();
        var fields = JsonNodeFactory.instance.objectNode().put("all", usual);
        sides.forEach((name, side) -> {
            if (side != usual) {
                fields.put(name, side);
            }
        });
        return fields;
    }

    private static long count(List<Double> all, double side) {
        return all.stream().filter(other -> other == side).count();
    }
}
