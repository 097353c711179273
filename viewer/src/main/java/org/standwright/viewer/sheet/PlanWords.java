package org.standwright.viewer.sheet;

import java.util.ArrayList;
import java.util.Locale;
import org.standwright.make.SheetPaper;
import org.standwright.packet.words.BoardWords;
import org.standwright.packet.words.ProofWords;
import org.standwright.packet.words.YieldShares;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

/** What a plan comes to, in sentences. */
final class PlanWords {
    private PlanWords() {}

    /** 'birch 18: 3 sheets; proved minimal: no plan can do with less.', and what becomes of the boards. */
    static String of(MaterialPlan material, SheetPlan plan, Units units) {
        return material.material().name() + ": " + ProofWords.of(material, units)
                + (material.proof().isMinimal()
                        ? ": no plan can do with less."
                        : ". No plan can do with less than the bound; a better one could save the gap at most.")
                + " " + shares(material) + (plan.isRepeatable() ? "" : " " + ProofWords.NOT_REPEATABLE);
    }

    /** 'Parts 81.4 %, kerf 1.2 %, …'. */
    private static String shares(MaterialPlan material) {
        var shares = YieldShares.of(material.areas());
        var words = new ArrayList<String>();
        for (int i = 0; i < shares.size(); i++) {
            words.add(YieldShares.NAMES.get(i).toLowerCase(Locale.ROOT) + " " + shares.get(i));
        }
        var all = String.join(", ", words);
        return all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1) + ".";
    }

    /** 'birch 18, sheet 2 of 3 (at hand)'. */
    static String board(SheetPaper paper, Units units) {
        return BoardWords.of(paper.material(), paper.index(), units);
    }
}
