package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.part.Part;

/** Parts of sheets that bring hands near the blade: the narrowest, and the one whose longer side is shortest. */
public final class SmallParts implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "small-parts",
            "Are parts large enough to be sawn by hand?",
            "longer side at least the saw's smallest piece, or 300 mm; shorter side at least 60 mm",
            "Bars are cut to length, not pushed along a fence.",
            "common practice, no source");

    private static final double NARROW = 60;
    private static final double SHORT = 300;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        double smallest = stand.design().saw().smallestPiece();
        var findings = new ArrayList<Finding>();
        found(
                        stand,
                        SmallParts::shorter,
                        NARROW,
                        "narrowest",
                        " wide",
                        "Use a push stick, or rip it from a wider blank.")
                .ifPresent(findings::add);
        found(
                        stand,
                        SmallParts::longer,
                        smallest > 0 ? smallest : SHORT,
                        "shortest",
                        " long",
                        "Cut it on a sled, or several as one blank and apart last.")
                .ifPresent(findings::add);
        return findings;
    }

    private static Optional<Finding> found(
            LoadedStand stand, ToDoubleFunction<PlacedPart> side, double least, String which, String unit, String way) {
        var sheets = stand.stand().assembly().parts().stream()
                .filter(placed -> !placed.part().material().isBar())
                .toList();
        long below = sheets.stream()
                .filter(placed -> side.applyAsDouble(placed) < least)
                .count();
        var more = below > 1 ? ", one of " + below + " below the limit" : "";
        return sheets.stream().min(Comparator.comparingDouble(side)).map(placed -> {
            double size = side.applyAsDouble(placed);
            var words = "The " + which + " part is " + stand.units().length(size) + unit + more + "."
                    + (below > 0 ? " " + way : "");
            return Finding.judged(
                    TEXT, placed.label(), new Gauge(Quantity.LENGTH, size, Limit.noteBelow(least)), words);
        });
    }

    private static double shorter(PlacedPart placed) {
        Part part = placed.part();
        return Math.min(part.roughLength(), part.roughWidth());
    }

    private static double longer(PlacedPart placed) {
        Part part = placed.part();
        return Math.max(part.roughLength(), part.roughWidth());
    }
}
