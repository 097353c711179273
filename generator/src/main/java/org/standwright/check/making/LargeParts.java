package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.part.Grain;
import org.standwright.part.Part;

/** Parts longer than the saw can cut where no hand-held saw divides sheets. */
public final class LargeParts implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "large-parts",
            "Can the saw cut the largest parts?",
            "rough length at most the longest rip, rough width at most the longest crosscut",
            "Parts without grain may be turned. A hand-held saw makes cuts of any length.",
            "the saw as its owner gives it");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var saw = stand.design().saw();
        var findings = new ArrayList<Finding>();
        if (saw.breakDown().isEmpty()) {
            found(stand, LargeParts::ripped, saw.longestRip(), "rip").ifPresent(findings::add);
            found(stand, LargeParts::crosscut, saw.longestCrosscut(), "crosscut")
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> found(
            LoadedStand stand, ToDoubleFunction<Part> cut, OptionalDouble longest, String what) {
        if (longest.isEmpty()) {
            return Optional.empty();
        }
        return stand.stand().assembly().parts().stream()
                .filter(placed -> !placed.part().material().isBar())
                .max(Comparator.comparingDouble((PlacedPart placed) -> cut.applyAsDouble(placed.part())))
                .map(placed -> Finding.judged(
                        TEXT,
                        placed.label(),
                        new Gauge(
                                Quantity.LENGTH, cut.applyAsDouble(placed.part()), Limit.atMost(longest.getAsDouble())),
                        "The longest " + what + " of a part is "
                                + stand.units().length(cut.applyAsDouble(placed.part())) + "."));
    }

    private static double ripped(Part part) {
        return part.material().grain() == Grain.NONE
                ? Math.min(part.roughLength(), part.roughWidth())
                : part.roughLength();
    }

    private static double crosscut(Part part) {
        return part.material().grain() == Grain.NONE
                ? Math.min(part.roughLength(), part.roughWidth())
                : part.roughWidth();
    }
}
