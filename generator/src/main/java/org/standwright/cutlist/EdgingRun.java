package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.part.Banding;
import org.standwright.part.Edge;
import org.standwright.unit.Units;

/**
 * All edges that are covered with one tape or lipping.
 *
 * @param length of the finished edges, mm
 * @param parts names of what it goes on, each once
 */
public record EdgingRun(Banding banding, double length, List<String> parts) {
    /** Bought longer for the ends that are trimmed off; common practice, no source. */
    private static final double OVER = 0.10;

    public EdgingRun {
        parts = List.copyOf(parts);
    }

    /** One run an edging, in order of first use. */
    static List<EdgingRun> of(List<CutLine> lines) {
        var runs = new LinkedHashMap<Banding, EdgingRun>();
        for (var line : lines) {
            for (var edge : Edge.values()) {
                line.part().bands().on(edge).ifPresent(banding -> {
                    var run = new EdgingRun(
                            banding,
                            line.count() * along(edge, line),
                            List.of(line.part().name()));
                    runs.merge(banding, run, EdgingRun::plus);
                });
            }
        }
        return List.copyOf(runs.values());
    }

    private static double along(Edge edge, CutLine line) {
        return edge.isEnd() ? line.part().width() : line.part().length();
    }

    private EdgingRun plus(EdgingRun other) {
        var all = new ArrayList<>(parts);
        other.parts.stream().filter(part -> !all.contains(part)).forEach(all::add);
        return new EdgingRun(banding, length + other.length, all);
    }

    /** What to buy, mm. */
    public double toBuy() {
        return length * (1 + OVER);
    }

    /** As something to buy: 'birch tape: 7.4 m with 10 % over'. */
    HardwareLine hardware(Units units) {
        var item = banding.name() + ": " + units.run(toBuy()) + " with " + Math.round(100 * OVER) + " % over";
        return new HardwareLine(
                item, 1, parts.stream().map(part -> "edges of " + part).toList());
    }
}
