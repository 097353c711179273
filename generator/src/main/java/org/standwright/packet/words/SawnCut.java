package org.standwright.packet.words;

import java.util.List;
import org.standwright.sheet.Cut;
import org.standwright.sheet.SheetUnit;

/**
 * A cut of a material's plan, and what comes of it.
 *
 * @param sheet that it is in, counted from 1
 * @param frees labels of finished pieces, and 'offcut'
 * @param waits whether all that it parts are pieces that wait for the second stage
 */
public record SawnCut(int sheet, Cut cut, List<String> frees, boolean waits) {
    public SawnCut {
        frees = List.copyOf(frees);
    }

    /** From the reference edge to the near side of the kerf, mm. */
    public double setting() {
        return SheetUnit.mm(cut.setting());
    }

    /** How far the panel lies along the fence, mm. */
    public double alongFence() {
        var kerf = cut.kerf();
        return SheetUnit.mm(cut.direction() == Cut.Direction.RIP ? kerf.length() : kerf.width());
    }

    boolean sharesSetUpWith(SawnCut other) {
        return cut.tool() == other.cut.tool()
                && cut.direction() == other.cut.direction()
                && cut.reference() == other.cut.reference()
                && cut.setting() == other.cut.setting();
    }
}
