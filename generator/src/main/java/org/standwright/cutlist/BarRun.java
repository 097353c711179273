package org.standwright.cutlist;

import java.util.List;
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
}
