package org.standwright.cutlist;

import java.util.List;

/** One thing to buy, with every use of it. */
public record HardwareLine(String item, int count, List<String> uses) {
    public HardwareLine {
        uses = List.copyOf(uses);
    }
}
