package org.standwright.check.fastener;

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
import org.standwright.design.kit.Screw;
import org.standwright.geom.Grid;
import org.standwright.part.EdgeHole;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * A screw sits at least three of its diameters from the edges of a panel, or the wood splits; the worst of a stand. Screws
 * into the middle of another panel's edge and those of butt hinges have no choice and are left out; bolts in clearance
 * holes split nothing.
 */
public final class EdgeDistance implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "edge-distance",
            "Are screws far enough from the edges?",
            "distance of the hole's centre, at least 3 d",
            "Left out are screws into the middle of another panel's edge, screws of butt hinges, whose place the hinge gives, "
                    + "and bolts in clearance holes.",
            "common practice, no source");

    private static final double DIAMETERS = 3;
    private static final List<String> WITHOUT_CHOICE =
            List.of("joint screw", "joint screw pilot", "plinth screw", "hinge pilot");

    /** Of a front, whose holes are wider than its screws so that it can be set. */
    private static final String OVERSIZE = "front screw, oversize";

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        return stand.stand().assembly().parts().stream()
                .filter(placed -> !placed.part().material().isBar())
                .flatMap(placed -> places(stand, placed))
                .min(Comparator.comparingDouble(place -> place.distance() / place.diameter()))
                .map(place -> Finding.judged(
                        TEXT,
                        place.part(),
                        new Gauge(Quantity.LENGTH, place.distance(), Limit.cautionBelow(DIAMETERS * place.diameter())),
                        "Nearest to an edge is its hole for '" + place.purpose() + "': "
                                + stand.units().length(place.distance()) + " from it to the middle of a screw of "
                                + stand.units().length(place.diameter()) + "."))
                .stream()
                .toList();
    }

    private static Stream<Place> places(LoadedStand stand, PlacedPart placed) {
        var part = placed.part();
        return part.features().stream()
                .filter(feature -> !WITHOUT_CHOICE.contains(feature.purpose()))
                .flatMap(feature -> place(stand, placed.label(), part, feature).stream());
    }

    private static Optional<Place> place(LoadedStand stand, String label, Part part, Feature feature) {
        if (feature instanceof Hole hole) {
            double toEnds = Math.min(hole.x(), part.length() - hole.x());
            double toEdges = Math.min(hole.y(), part.width() - hole.y());
            return screw(stand, hole.diameter(), hole.purpose())
                    .map(screw -> new Place(label, hole.purpose(), Math.min(toEnds, toEdges), screw.diameter()));
        }
        if (feature instanceof EdgeHole hole) {
            double reach = hole.edge().isEnd() ? part.width() : part.length();
            double distance = Math.min(hole.along(), reach - hole.along());
            return screw(stand, hole.diameter(), hole.purpose())
                    .map(screw -> new Place(label, hole.purpose(), distance, screw.diameter()));
        }
        return Optional.empty();
    }

    /** What the hole is a pilot or a clearance bore for; the thicker one where it suits both. */
    private static Optional<Screw> screw(LoadedStand stand, double bore, String purpose) {
        var screws = stand.design().screws();
        if (purpose.equals(OVERSIZE)) {
            return Optional.of(screws.panel());
        }
        return Stream.of(screws.panel(), screws.slide())
                .filter(family -> Grid.same(family.pilot(), bore) || Grid.same(family.clearance(), bore))
                .max(Comparator.comparingDouble(Screw::diameter));
    }

    private record Place(String part, String purpose, double distance, double diameter) {}
}
