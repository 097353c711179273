package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.geom.Interval;

/** How many studs that its strips are screwed to stand behind a holder. */
public final class HangSupport implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "hang-support",
            "Do studs stand behind what hangs?",
            "",
            "Those within its hanger that its strips are screwed to.",
            "common practice, no source: one or more; a load between two studs still goes to both");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return wall.loads().stream().map(load -> found(wall, load)).toList();
    }

    private static Finding found(HungWall wall, HeldLoad load) {
        var holder = load.holder();
        var back = holder.made().back();
        var hanger = new Interval(holder.x() + back.x0(), holder.x() + back.x1());
        var strips = wall.wall().wall(holder.wall()).rows().stream()
                .filter(row -> row.number() == holder.row())
                .flatMap(row -> row.strips().stream())
                .filter(strip -> strip.along().overlap(hanger) > 0)
                .toList();
        double on = strips.stream()
                .mapToDouble(strip -> strip.along().overlap(hanger))
                .sum();
        long studs = strips.stream()
                .flatMap(strip -> strip.studs().stream())
                .filter(hanger::holds)
                .count();
        var units = wall.units();
        var message = studs == 0
                ? "No stud stands behind it; it hangs between two or beyond the last."
                : studs == 1 ? "One stud stands behind it." : studs + " studs stand behind it.";
        return Finding.judged(TEXT, holder.name(), new Gauge(Quantity.COUNT, studs, Limit.cautionBelow(1)), message)
                .with(new Input(
                        "l", "of its hanger on strips, of " + units.length(hanger.length()), Quantity.LENGTH, on))
                .remedies(() -> new Stronger(wall).elsewhere(load).stream().toList());
    }
}
