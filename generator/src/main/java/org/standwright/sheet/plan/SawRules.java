package org.standwright.sheet.plan;

import java.util.OptionalDouble;
import org.standwright.design.kit.Saw;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.CutRules;

/** A saw's limits in the numbers of a packing job. */
final class SawRules {
    private SawRules() {}

    static CutRules of(Saw saw) {
        int kerf = SheetUnit.up(saw.kerf());
        return new CutRules(
                kerf,
                saw.stages().orElse(CutRules.ANY),
                saw.first(),
                longest(saw.longestRip(), kerf),
                longest(saw.longestCrosscut(), kerf),
                saw.breakDown()
                        .map(by -> extra(by.kerf(), by.allowance(), saw.kerf()))
                        .orElse(CutRules.NONE));
    }

    private static int longest(OptionalDouble cut, int kerf) {
        return cut.isPresent() ? SheetUnit.down(cut.getAsDouble()) + kerf : CutRules.ANY;
    }

    /** What the saw's own kerf does not cover already: the other kerf, and what is recut on both sides of it. */
    private static int extra(double kerf, double allowance, double sawsKerf) {
        return Math.max(0, SheetUnit.up(kerf + 2 * allowance) - SheetUnit.up(sawsKerf));
    }
}
