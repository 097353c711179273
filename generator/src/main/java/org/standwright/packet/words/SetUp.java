package org.standwright.packet.words;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.standwright.part.Edge;
import org.standwright.sheet.Cut;

/**
 * Cuts that follow each other without the saw being set anew.
 *
 * @param number counted through a material
 * @param cuts at least one, all with one tool, direction, reference edge and setting
 */
public record SetUp(int number, List<SawnCut> cuts) {
    public SetUp {
        cuts = List.copyOf(cuts);
    }

    public Cut.Tool tool() {
        return first().tool();
    }

    public Cut.Direction direction() {
        return first().direction();
    }

    public Edge reference() {
        return first().reference();
    }

    /** From the reference edge, mm. */
    public double setting() {
        return cuts.get(0).setting();
    }

    /** Its cuts sheet by sheet. */
    public List<List<SawnCut>> bySheet() {
        var sheets = new TreeMap<Integer, List<SawnCut>>();
        cuts.forEach(cut -> sheets.merge(
                cut.sheet(),
                List.of(cut),
                (before, more) -> Stream.concat(before.stream(), more.stream()).toList()));
        return List.copyOf(sheets.values());
    }

    private Cut first() {
        return cuts.get(0).cut();
    }
}
