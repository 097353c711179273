package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.fastener.BoughtScrew;

/** Bores that nearly come through a board, and screws that are too long for what they go into: the worst of each. */
public final class ScrewsThrough implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "screws-through",
            "Does a screw come out on the other side?",
            "length, at most what it goes through less what is left",
            "A screw ends 2 mm before the far face, one in the worktop 5 mm, one in a shared partition in its half.",
            "common practice, no source");

    /** Wood behind a bore, mm. */
    private static final double BEHIND = 2;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var findings = new ArrayList<Finding>();
        deepest(stand).ifPresent(findings::add);
        longest(stand).ifPresent(findings::add);
        return findings;
    }

    private static Optional<Finding> deepest(LoadedStand stand) {
        return stand.stand().assembly().parts().stream()
                .flatMap(ScrewsThrough::blind)
                .min(Comparator.comparingDouble(blind -> blind.thickness() - blind.depth()))
                .map(blind -> Finding.judged(
                        TEXT,
                        blind.part(),
                        new Gauge(
                                Quantity.LENGTH,
                                blind.depth(),
                                Limit.atMost(blind.thickness() - BEHIND, blind.thickness())),
                        "The bore that leaves least behind it, for '" + blind.purpose() + "', is "
                                + stand.units().length(blind.depth()) + " deep in "
                                + stand.units().length(blind.thickness()) + "."));
    }

    /** Without recesses on the axis of a hole right through. */
    private static Stream<Blind> blind(PlacedPart placed) {
        var part = placed.part();
        var bores = Bore.of(part);
        return bores.stream()
                .filter(bore -> bore.isInFace()
                        && !bore.through()
                        && bores.stream().noneMatch(other -> other.through() && bore.widens(other)))
                .map(bore -> new Blind(
                        placed.label(), bore.purpose(), bore.box().size().z(), part.thickness()));
    }

    private static Optional<Finding> longest(LoadedStand stand) {
        var room = new ScrewRoom(stand.design());
        return BoughtScrew.of(stand.stand()).stream()
                .flatMap(screw -> room.limit(screw.use()).map(limit -> new TightScrew(screw, limit)).stream())
                .max(Comparator.comparingDouble(
                        tight -> tight.screw().length() / tight.limit().first()))
                .map(tight -> Finding.judged(
                        TEXT,
                        tight.screw().use(),
                        new Gauge(Quantity.LENGTH, tight.screw().length(), tight.limit()),
                        "The screws that come nearest to the far face are "
                                + stand.units().length(tight.screw().length()) + " long."));
    }

    private record Blind(String part, String purpose, double depth, double thickness) {}

    private record TightScrew(BoughtScrew screw, Limit limit) {}
}
