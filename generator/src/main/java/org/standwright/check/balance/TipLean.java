package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.balance.statics.TippingCase;

/** A person leans on the edge of the worktop, at its corners. */
public final class TipLean implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-lean",
            "Does it tip when somebody leans on it?",
            "ratio = R / O, with F down at 50 mm from the edge of the worktop",
            "Contents count only where they tip. Swivel casters point the worst way. Drawers and "
                    + "doors are closed. A stand with a working height over 1000 mm is besides pressed down "
                    + "by 350 N and pulled out by 50 N.",
            "EN 16122:2012, 11.2.1 and 11.2.2, forces as quoted by an accredited test report");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        var corners = new TopCorners(loaded.stand());
        double lean = loaded.design().loads().lean();
        var leaning = standing.closed().with(edge -> corners.down(lean, edge));
        var finding = verdict(
                standing, "somebody leans on the worktop with " + loaded.units().force(lean), leaning);
        return loaded.stand().stack().workingHeight() > TopCorners.HIGH
                ? List.of(
                        finding,
                        verdict(
                                standing,
                                TopCorners.highWords(loaded.units()),
                                standing.closed().with(corners::high)))
                : List.of(finding);
    }

    private static Finding verdict(Standing standing, String what, TippingCase leaning) {
        return new Verdict(TEXT, "worktop", "When " + what, standing, leaning).within(Verdict.IN_USE);
    }
}
