package org.standwright.check.balance;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Support;
import org.standwright.design.column.Running;
import org.standwright.design.kit.Caster;

/**
 * A stand on casters: the two at the operator's side lock wheel and swivel, some swivel, drawers stay shut while it
 * rolls. Portable bases must be locked in use (29 CFR 1910.212(b) and its interpretations).
 */
public final class RollingStand implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("rolling-stand", "Does it stay where it is?", "29 CFR 1910.212(b)");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        if (!(stand.design().support() instanceof Support.Casters casters)) {
            return List.of();
        }
        var findings = new ArrayList<Finding>();
        if (!casters.caster().brake()) {
            findings.add(Finding.caution(TEXT, casters.caster().name(), unlocked(casters)));
        }
        var running = Running.of(stand.design());
        if (!running.holdsClosed()) {
            findings.add(Finding.caution(
                    TEXT,
                    running.name(),
                    "Nothing holds a closed drawer: drawers come open when the stand is moved. Use slides "
                            + "with a closed detent, or latches."));
        }
        if (isFixed(casters.caster())
                && casters.others().map(RollingStand::isFixed).orElse(true)) {
            findings.add(Finding.caution(
                    TEXT, "casters", "All four casters are fixed: it cannot be steered. Let two of them swivel."));
        }
        findings.add(atWork(casters));
        return findings;
    }

    private static boolean isFixed(Caster caster) {
        return caster.swivelRadius() == 0;
    }

    /** What to do before work is fed; no more than a reminder where what locks is there. */
    private static Finding atWork(Support.Casters casters) {
        boolean othersLock =
                casters.others().map(Caster::brake).orElse(casters.caster().brake());
        if (!casters.caster().brake()) {
            return Finding.caution(
                    TEXT,
                    "casters",
                    "Feed work only with "
                            + (othersLock ? "the two casters at the operator's side" : "all four casters")
                            + " wedged, or the stand lifted off them.");
        }
        return Finding.note(
                TEXT,
                "casters",
                othersLock
                        ? "Feed work only with all four casters locked, or the stand lifted off them."
                        : "Feed work only with the two casters at the operator's side locked; wedge or lift the others, "
                                + "which have no brake.");
    }

    private static String unlocked(Support.Casters casters) {
        return casters.others().filter(Caster::brake).isPresent()
                ? "The two casters at the operator's side do not lock, the others do: change them over, or the stand "
                        + "walks while you feed."
                : "None of the casters locks. Use two that lock wheel and swivel on the operator's side, or the stand "
                        + "walks while you feed.";
    }
}
