package org.standwright.check.making;

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
import org.standwright.part.EdgeHole;

/** Bores in an edge sit in the middle third of its thickness, or the plies part; the one farthest off. */
public final class EdgePly implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "edge-ply",
            "Are bores in edges in the middle of the board?",
            "distance of the axis from the middle, at most t / 6; t / 2 - r breaks out",
            "",
            "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        return stand.stand().assembly().parts().stream()
                .flatMap(EdgePly::offs)
                .max(Comparator.comparingDouble(off -> off.gauge().used()))
                .map(off -> Finding.judged(
                        TEXT,
                        off.part(),
                        off.gauge(),
                        "Of all bores in edges its '" + off.purpose() + "' lies farthest from the middle of the edge: "
                                + stand.units().length(off.gauge().figure()) + "."))
                .stream()
                .toList();
    }

    private static Stream<Off> offs(PlacedPart placed) {
        double thickness = placed.part().thickness();
        return placed.part().features().stream()
                .filter(EdgeHole.class::isInstance)
                .map(EdgeHole.class::cast)
                .map(hole -> {
                    double breaksOut = (thickness - hole.diameter()) / 2;
                    var limit = Limit.atMost(Math.min(thickness / 6, breaksOut), breaksOut);
                    double off = Math.abs(hole.z() - thickness / 2);
                    return new Off(placed.label(), hole.purpose(), new Gauge(Quantity.LENGTH, off, limit));
                });
    }

    private record Off(String part, String purpose, Gauge gauge) {}
}
