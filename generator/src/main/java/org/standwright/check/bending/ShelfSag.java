package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/**
 * How far shelves, dividers and the bottom sag in every bay. A bottom on casters or levelers is not held under its
 * partitions and is {@link BottomSag}'s.
 */
public final class ShelfSag implements Rule<LoadedStand> {
    public static final String SOURCE =
            "beams: Wood Handbook FPL-GTR-190 chapter 9; load 40 lbf/ft\u00b2 and stop at L/144:"
                    + " Architectural Woodwork Standards 2009 section 10; caution at L/240: trade figure for board; creep EN"
                    + " 1995-1-1 table 3.2, as quoted";

    private static final RuleText TEXT = new RuleText(
            "shelf-sag",
            "Do shelves and floors sag?",
            "sag = 5 W L^3 / (384 E I) x (1 + kdef), with the load of each partition within the bay",
            "Loaded evenly for years, 90.7 kg (200 lb) on one shelf at most; lies on its ends without being held down,"
                    + " fixed or not. A glued front lipping bends with the shelf.",
            SOURCE);

    private static final Set<String> SHELVES = Set.of("shelf", "adjustable shelf");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var findings = new ArrayList<Finding>();
        var loads = new LevelLoads(loaded);
        for (var part : loaded.stand().assembly().parts()) {
            var name = part.part().name();
            if (SHELVES.contains(name)) {
                findings.add(shelf(part, loads, loaded));
            } else if (name.equals("divider")) {
                findings.add(floor(part, part.label(), gap(part, loaded), loads, loaded));
            } else if (name.equals("bottom") && BottomSpan.holdsPartitions(loaded.design())) {
                bottom(part, loads, loaded, findings);
            }
        }
        return findings;
    }

    private static Gap gap(PlacedPart level, LoadedStand loaded) {
        var middle = level.box().centre();
        return Uprights.of(loaded.stand()).gap(middle.z(), middle.x()).orElseThrow();
    }

    private static Finding shelf(PlacedPart part, LevelLoads loads, LoadedStand loaded) {
        var gap = gap(part, loaded);
        return finding(part, part.label(), gap, loads.onShelf(part, gap.x0(), gap.x1()), loaded);
    }

    private static Finding floor(PlacedPart part, String subject, Gap gap, LevelLoads loads, LoadedStand loaded) {
        return finding(part, subject, gap, loads.onFloor(part, gap.x0(), gap.x1()), loaded);
    }

    /** Between the partitions that go right up, below which pads or rails are. */
    private static void bottom(PlacedPart part, LevelLoads loads, LoadedStand loaded, List<Finding> findings) {
        double full = Named.part(loaded.stand(), "sub-top").box().min().z();
        for (var bay : loaded.stand().bays()) {
            var gap = Uprights.of(loaded.stand()).around(bay.opening(), full);
            findings.add(floor(part, "bottom of bay " + bay.name(), gap, loads, loaded));
        }
    }

    private static Finding finding(PlacedPart part, String subject, Gap gap, List<SpanLoad> loads, LoadedStand loaded) {
        var units = loaded.units();
        double stiffness = ShelfSection.of(part, loaded.design()).stiffness();
        var span = new Sagging(gap, new SimpleSpan(gap.length(), stiffness, loads), GrainWay.creep(part));
        return Finding.judged(
                        TEXT,
                        subject,
                        new Gauge(Quantity.SAG, span.sag(), limit(gap.length())),
                        "Over " + units.length(gap.length()) + " and under " + units.force(span.load()) + " it sags "
                                + Quantity.SAG.words(span.sag(), units) + " in the course of years.")
                .with(span.inputs())
                .remedies(() -> remedies(gap, loaded));
    }

    /** Of a clear span, mm. */
    public static Limit limit(double span) {
        return Limit.atMost(span / 240, span / 144);
    }

    private static List<Remedy> remedies(Gap gap, LoadedStand loaded) {
        var partitions = Stiffer.partitions(loaded.stand(), gap);
        var thicker = Stiffer.thickerCarcass(loaded.design());
        var remedies = new ArrayList<>(partitions);
        remedies.add(thicker);
        partitions.forEach(partition -> remedies.add(thicker.and(partition)));
        return remedies;
    }
}
