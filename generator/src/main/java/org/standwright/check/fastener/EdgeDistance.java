package org.standwright.check.fastener;

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
import org.standwright.design.kit.Screw;
import org.standwright.geom.Grid;
import org.standwright.part.EdgeHole;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * A fastener sits at least three of its diameters from the edges of a panel, or the wood splits; the worst of a stand. What
 * joins the panels of a carcass is left out: it sits on the middle of the panel that it holds.
 */
public final class EdgeDistance implements Rule {
    private static final RuleText TEXT = new RuleText(
            "edge-distance",
            "Are screws and bolts far enough from the edges?",
            "distance of the hole's centre, at least 3 d",
            "Joints of the carcass sit on the middle of a panel and are left out.",
            "common practice, no source");

    private static final double DIAMETERS = 3;
    /** What is wider holds no fastener: a cup, a recess, mm. */
    private static final double WIDEST = 14;

    private static final List<String> JOINTS =
            List.of("joint screw", "joint screw pilot", "connector", "connector head", "dowel");

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
                                + stand.units().length(place.distance()) + " from it to the middle of a fastener of "
                                + stand.units().length(place.diameter()) + "."))
                .stream()
                .toList();
    }

    private static Stream<Place> places(LoadedStand stand, PlacedPart placed) {
        var part = placed.part();
        return part.features().stream()
                .filter(feature -> !JOINTS.contains(feature.purpose()))
                .flatMap(feature -> distance(part, feature))
                .filter(near -> near.diameter() <= WIDEST)
                .map(near ->
                        new Place(placed.label(), near.purpose(), near.distance(), fastener(stand, near.diameter())));
    }

    private static Stream<Place> distance(Part part, Feature feature) {
        if (feature instanceof Hole hole) {
            double toEnds = Math.min(hole.x(), part.length() - hole.x());
            double toEdges = Math.min(hole.y(), part.width() - hole.y());
            return Stream.of(new Place(part.name(), hole.purpose(), Math.min(toEnds, toEdges), hole.diameter()));
        }
        if (feature instanceof EdgeHole hole) {
            double reach = hole.edge().isEnd() ? part.width() : part.length();
            double distance = Math.min(hole.along(), reach - hole.along());
            return Stream.of(new Place(part.name(), hole.purpose(), distance, hole.diameter()));
        }
        return Stream.empty();
    }

    /** Of the screw that the hole is a pilot or a clearance bore for, else of the hole itself, mm. */
    private static double fastener(LoadedStand stand, double bore) {
        var screws = stand.design().screws();
        return Stream.of(screws.panel(), screws.slide())
                .filter(family -> Grid.same(family.pilot(), bore) || Grid.same(family.clearance(), bore))
                .mapToDouble(Screw::diameter)
                .max()
                .orElse(bore);
    }

    private record Place(String part, String purpose, double distance, double diameter) {}
}
