package org.standwright.viewer.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.Guide;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SawWords;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.SetUp.Made;
import org.standwright.unit.Units;

/**
 * One cut at its place in the cutting order of a material.
 *
 * @param isFirst whether the fence is set for it
 * @param waits whether it belongs to the second stage
 */
record CutStep(NumberedSetUp setUp, Made made, boolean isFirst, boolean waits) {
    /**
     * All cuts in the order in which they are sawn.
     *
     * @param waiting labels of the pieces of the second stage
     */
    static List<CutStep> of(MaterialPlan material, Set<String> waiting) {
        var order = CuttingOrder.of(material, waiting);
        var steps = new ArrayList<CutStep>();
        order.now().forEach(setUp -> add(setUp, false, steps));
        order.later().forEach(setUp -> add(setUp, true, steps));
        return steps;
    }

    private static void add(NumberedSetUp setUp, boolean waits, List<CutStep> steps) {
        var cuts = setUp.setUp().cuts();
        for (int i = 0; i < cuts.size(); i++) {
            steps.add(new CutStep(setUp, cuts.get(i), i == 0, waits));
        }
    }

    Cut cut() {
        return made.cut();
    }

    /** 'Set-up 5: rip at the saw, fence 312.5 mm from the lower edge, good face up.' */
    String how(MaterialPlan material, Units units) {
        var cut = cut();
        var guide = Guide.of(cut);
        var set = isFirst ? "" : ", set as before";
        return "Set-up " + setUp.number() + ": " + SawWords.word(cut.direction()) + purpose(cut) + " with the "
                + SawWords.tool(cut.tool()) + ", " + guide.words() + " " + units.length(setUp.setting())
                + " from the " + SawWords.edge(cut.reference()) + " edge" + set + ", good face "
                + (cut.goodFaceUp() ? "up" : "down")
                + (cut.isScored(material.material()) ? "; score the line first" : "") + ".";
    }

    private static String purpose(Cut cut) {
        return cut.purpose() == Cut.Purpose.DIVIDE ? "" : " (" + SawWords.word(cut.purpose()) + ")";
    }

    /** 'Falls free: A, C (rest).' */
    String frees() {
        var free = SawWords.frees(made);
        return free.isEmpty() ? "Nothing falls free yet." : "Falls free: " + String.join(", ", free) + ".";
    }

    /** When it is made, where that is not at once; with a blank behind it. */
    String stage() {
        return waits ? "Second stage: wait until the openings are measured. " : "";
    }
}
