package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** The published test of a loaded top, as a benchmark. */
public final class TestTopLoad implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "test-top-load",
            "Would it stand the published test of a loaded top?",
            "ratio = R / O",
            "A benchmark only: the standard is for domestic and office furniture, not for shop furniture. Empty "
                    + "and closed, with its machine; swivel casters point the worst way.",
            "EN 16122:2012, 11.2.1 and 11.2.2, forces as quoted by an accredited test report");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        var corners = new TopCorners(loaded.stand());
        boolean high = loaded.stand().worktop().max().z() > TopCorners.HIGH;
        var what = high
                ? TopCorners.highWords(loaded.units())
                : "the worktop is pressed down with " + loaded.units().force(TopCorners.DOWN);
        var pressed =
                standing.closed().empty().with(edge -> high ? corners.high(edge) : corners.down(TopCorners.DOWN, edge));
        return List.of(new Verdict(TEXT, "worktop", "When " + what, standing, pressed).within(Verdict.IN_TEST));
    }
}
