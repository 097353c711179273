package org.standwright.cutlist;

import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.unit.Units;

/** What to cut and what to buy for one assembly. */
public record CutList(List<CutLine> lines, List<HardwareLine> hardware) {
    public CutList {
        lines = List.copyOf(lines);
        hardware = List.copyOf(hardware);
    }

    /**
     * Merges parts that are equal by rotation, and hardware of one name.
     *
     * @param units of the sizes in the machining notes
     */
    public static CutList of(Assembly assembly, Units units) {
        return new CutList(new LineMerger(units).lines(assembly.parts()), HardwareLine.merged(assembly.hardware()));
    }
}
