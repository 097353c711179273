package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.design.column.Running;
import org.standwright.design.kit.Caster;

/**
 * A stand on casters: the two at the operator's side lock wheel and swivel, drawers stay shut while it rolls. Portable bases must be
 * locked in use (29 CFR 1910.212(b) and its interpretations).
 */
final class RollingStand implements Rule {
    private static final String RULE = "rolling-stand";

    @Override
    public List<Finding> check(Stand stand, Load load) {
        if (!(stand.design().support() instanceof Support.Casters casters)) {
            return List.of();
        }
        var findings = new ArrayList<Finding>();
        if (!casters.caster().brake()) {
            findings.add(new Finding(
                    Severity.CAUTION, RULE, casters.caster().name(), unlocked(casters), "29 CFR 1910.212(b)"));
        }
        var running = Running.of(stand.design());
        if (!running.holdsClosed()) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    RULE,
                    running.name(),
                    "Nothing holds a closed drawer: drawers come open when the stand is moved. Use slides "
                            + "with a closed detent, or latches.",
                    "common practice, no source"));
        }
        findings.add(new Finding(
                Severity.CAUTION,
                RULE,
                "casters",
                "Feed work only with all casters locked or the stand lifted off them. On a floor 3 mm out of plane "
                        + "four casters stand on three.",
                "29 CFR 1910.212(b); common practice"));
        return findings;
    }

    private static String unlocked(Support.Casters casters) {
        return casters.others().filter(Caster::brake).isPresent()
                ? "The two casters at the operator's side do not lock, the others do: change them over, or the stand "
                        + "walks while you feed."
                : "None of the casters locks. Use two that lock wheel and swivel on the operator's side, or the stand "
                        + "walks while you feed.";
    }
}
