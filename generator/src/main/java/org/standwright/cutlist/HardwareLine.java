package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.assembly.Hardware;

/** One thing to buy, with every use of it. */
public record HardwareLine(String item, int count, List<String> uses) {
    public HardwareLine {
        uses = List.copyOf(uses);
    }

    /** One line an item, in order of first use. */
    static List<HardwareLine> merged(List<Hardware> hardware) {
        var lines = new LinkedHashMap<String, HardwareLine>();
        for (var piece : hardware) {
            var line = new HardwareLine(piece.item(), piece.count(), List.of(piece.use()));
            lines.merge(piece.item(), line, HardwareLine::plus);
        }
        return List.copyOf(lines.values());
    }

    private HardwareLine plus(HardwareLine other) {
        var all = new ArrayList<>(uses);
        other.uses.stream().filter(use -> !all.contains(use)).forEach(all::add);
        return new HardwareLine(item, count + other.count, all);
    }
}
