package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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
import org.standwright.design.built.DoorLayout;
import org.standwright.design.kit.Hinge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Feature;
import org.standwright.part.Hole;

/**
 * Hardware that is let in against the board that takes it: cups and recesses leave 3 mm, dowels and heads of connectors 6
 * mm behind them, all bores in an edge 3 mm on either side; a hinge's leaf is no wider than the door is thick. The worst
 * of each kind.
 */
public final class HardwareThickness implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "hardware-thickness",
            "Are the boards thick enough for the hardware?",
            "depth or width of the bore, at most the thickness less the wood that it leaves",
            "Left behind: 3 mm by cups and recesses, 6 mm by dowels and connectors; 3 mm on either side in an edge.",
            "common practice, no source");

    /** Wood behind a bore in a face by what it is for, mm. */
    private static final Map<String, Double> BEHIND = Map.of("hinge cup", 3.0, "dowel", 6.0, "connector head", 6.0);
    /** Behind the recess for a bolt's head or a nut, mm. */
    private static final double BEHIND_RECESS = 3;
    /** On either side of a bore in an edge, mm. */
    private static final double BESIDE = 3;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var findings = new ArrayList<Finding>();
        bores(stand, true)
                .max(Comparator.comparingDouble(HardwareThickness::used))
                .ifPresent(findings::add);
        bores(stand, false)
                .max(Comparator.comparingDouble(HardwareThickness::used))
                .ifPresent(findings::add);
        stand.stand().bays().stream()
                .flatMap(bay -> bay.doors().stream())
                .flatMap(door -> leaf(stand, door).stream())
                .max(Comparator.comparingDouble(HardwareThickness::used))
                .ifPresent(findings::add);
        return findings;
    }

    private static double used(Finding finding) {
        return finding.gauge().orElseThrow().used();
    }

    private static Stream<Finding> bores(LoadedStand stand, boolean inFaces) {
        return stand.stand().assembly().parts().stream()
                .flatMap(placed -> placed.part().features().stream()
                        .flatMap(feature ->
                                (inFaces ? inFace(stand, placed, feature) : inEdge(stand, placed, feature)).stream()));
    }

    private static Optional<Finding> inFace(LoadedStand stand, PlacedPart placed, Feature feature) {
        if (!(feature instanceof Hole hole) || hole.depth().isEmpty()) {
            return Optional.empty();
        }
        double thickness = placed.part().thickness();
        var units = stand.units();
        return behind(hole.purpose())
                .map(behind -> Finding.judged(
                        TEXT,
                        placed.label(),
                        new Gauge(Quantity.LENGTH, hole.depth().getAsDouble(), Limit.atMost(thickness - behind)),
                        "Its bore for '" + hole.purpose() + "' is "
                                + units.length(hole.depth().getAsDouble()) + " deep in a board of "
                                + units.length(thickness) + "."));
    }

    private static Optional<Double> behind(String purpose) {
        return purpose.startsWith("recess") ? Optional.of(BEHIND_RECESS) : Optional.ofNullable(BEHIND.get(purpose));
    }

    private static Optional<Finding> inEdge(LoadedStand stand, PlacedPart placed, Feature feature) {
        if (!(feature instanceof EdgeHole hole) || placed.part().material().isBar()) {
            return Optional.empty();
        }
        double thickness = placed.part().thickness();
        var units = stand.units();
        return Optional.of(Finding.judged(
                TEXT,
                placed.label(),
                new Gauge(Quantity.LENGTH, hole.diameter(), Limit.atMost(thickness - 2 * BESIDE)),
                "Its bore for '" + hole.purpose() + "' is " + units.length(hole.diameter()) + " wide in an edge of "
                        + units.length(thickness) + "."));
    }

    private static Optional<Finding> leaf(LoadedStand stand, DoorLayout door) {
        if (!(door.hinge() instanceof Hinge.Butt butt)) {
            return Optional.empty();
        }
        double thickness = stand.design().drawers().front().material().thickness();
        var units = stand.units();
        return Optional.of(Finding.judged(
                TEXT,
                "door " + door.name(),
                new Gauge(Quantity.LENGTH, butt.leaf(), Limit.atMost(thickness)),
                "The leaf of " + butt.name() + " is " + units.length(butt.leaf()) + " wide on a door of "
                        + units.length(thickness) + "."));
    }
}
