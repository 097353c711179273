package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/**
 * Bores of one part that come too near each other, from both faces or from an edge and a face: what goes in would meet.
 * The nearest two of a stand.
 */
public final class MeetingScrews implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "meeting-screws",
            "Do screws from two sides meet in a board?",
            "wood between two bores, at least 0.5 mm",
            "A recess on the axis of its own hole is one bore with it.",
            "common practice, no source");

    /** mm. */
    private static final double LEAST = 0.5;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        return stand.stand().assembly().parts().stream()
                .flatMap(MeetingScrews::pairs)
                .min(Comparator.comparingDouble(Two::wood))
                .map(nearest -> found(stand, nearest))
                .stream()
                .toList();
    }

    private static Finding found(LoadedStand stand, Two two) {
        var which = "'" + two.one().purpose() + "' and '" + two.other().purpose() + "'";
        if (two.wood() <= 0) {
            return Finding.stop(TEXT, two.part(), "Its bores for " + which + " meet.");
        }
        return Finding.judged(
                TEXT,
                two.part(),
                new Gauge(Quantity.LENGTH, two.wood(), Limit.atLeast(LEAST)),
                "The nearest two bores of a part, its " + which + ", leave "
                        + stand.units().length(two.wood()) + " of wood between them.");
    }

    private static Stream<Two> pairs(PlacedPart placed) {
        var bores = Bore.of(placed.part());
        var pairs = new ArrayList<Two>();
        for (int i = 0; i < bores.size(); i++) {
            for (int j = i + 1; j < bores.size(); j++) {
                var one = bores.get(i);
                var other = bores.get(j);
                if (!one.widens(other)) {
                    pairs.add(new Two(placed.label(), one, other, one.wood(other)));
                }
            }
        }
        return pairs.stream();
    }

    private record Two(String part, Bore one, Bore other, double wood) {}
}
