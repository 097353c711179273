package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.geom.Grid;
import org.standwright.part.Material;

/** All that is cut from bars of one section. */
public record BarRun(Material section, List<CutLine> lines) {
    public BarRun {
        lines = List.copyOf(lines);
    }

    /** Pieces of all its lines. */
    public int count() {
        return lines.stream().mapToInt(CutLine::count).sum();
    }

    /** Length of all pieces with a cut for each, mm; what is left over at the ends of the bars is not in it. */
    public double length(double kerf) {
        return lines.stream()
                .mapToDouble(line -> line.count() * (line.part().roughLength() + kerf))
                .sum();
    }

    /**
     * Which pieces come from which bar: each, the longest first, from the first bar that still holds it.
     *
     * @param bar length of a bar as bought, mm
     * @return labels in cutting order, bar by bar
     * @throws IllegalArgumentException if a piece is longer than a bar
     */
    public List<List<String>> bars(double bar, double kerf) {
        var bars = new ArrayList<List<String>>();
        var left = new ArrayList<Double>();
        var longestFirst = lines.stream()
                .sorted(Comparator.comparingDouble(
                        (CutLine line) -> -line.part().roughLength()))
                .toList();
        for (var line : longestFirst) {
            double length = line.part().roughLength();
            if (Grid.less(bar, length)) {
                throw new IllegalArgumentException("'" + line.part().name() + "' is " + length
                        + " mm long, but a bar of '" + section.name() + "' only " + bar + " mm; buy longer bars.");
            }
            for (int piece = 0; piece < line.count(); piece++) {
                int at = IntStream.range(0, bars.size())
                        .filter(i -> !Grid.less(left.get(i), length))
                        .findFirst()
                        .orElse(bars.size());
                if (at == bars.size()) {
                    bars.add(new ArrayList<>());
                    left.add(bar);
                }
                bars.get(at).add(line.label());
                left.set(at, left.get(at) - length - kerf);
            }
        }
        return bars.stream().map(List::copyOf).toList();
    }
}
