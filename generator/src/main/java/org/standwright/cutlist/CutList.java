package org.standwright.cutlist;

import java.util.List;

/** What to cut and what to buy for one assembly. */
public record CutList(List<CutLine> lines, List<HardwareLine> hardware) {
    public CutList {
        lines = List.copyOf(lines);
        hardware = List.copyOf(hardware);
    }
}
