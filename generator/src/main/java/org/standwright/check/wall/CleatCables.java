package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/** Screws that can meet a cable: those deeper in a stud than cables must lie, and those of studs beside a box. */
public final class CleatCables implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-cables",
            "Can a screw meet a cable?",
            "depth = length - strip under the head - covering",
            "Cables in bored studs lie 32 mm (1 1/4 in) deep or more, and studs are 88.9 mm (3 1/2 in) deep; beside a box they run up, down and across.",
            "NEC 300.4, from memory: a caution, no more, and no legal advice; where cables run: common practice, no source;"
                    + " depth of a 2x4: PS 20, as quoted");

    /** mm. */
    private static final double CABLES = 32;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var findings = new ArrayList<Finding>();
        unlisted(wall).ifPresent(findings::add);
        for (var cleated : wall.wall().walls()) {
            if (!cleated.strips().isEmpty() && cleated.wall().framing() instanceof Framing.WoodStuds) {
                findings.add(deep(wall, cleated));
            }
            for (int i = 0; i < cleated.zones().size(); i++) {
                beside(wall, cleated, cleated.zones().get(i), findings);
            }
        }
        return findings;
    }

    private static Finding deep(HungWall wall, CleatedWall cleated) {
        var units = wall.units();
        double into = wall.wall().screwing().into(cleated.wall().framing());
        var words = "The wall screws go " + units.length(into) + " into the studs."
                + (Grid.less(WallScrew.STUD_DEPTH, into)
                        ? " One comes out at the back of a stud " + units.length(WallScrew.STUD_DEPTH) + " deep."
                        : "");
        return Finding.judged(
                        TEXT,
                        cleated.wall().name(),
                        new Gauge(Quantity.LENGTH, into, Limit.cautionAbove(CABLES)),
                        Grid.less(CABLES, into)
                                ? words + " Locate cables before driving, on every stud and every strip of this wall."
                                : words)
                .with(new Input(
                        "length",
                        "of a screw",
                        Quantity.LENGTH,
                        wall.wall().screwing().length()))
                .remedies(() -> shorter(wall, into));
    }

    /** A length that its maker chose and nobody sells. */
    private static Optional<Finding> unlisted(HungWall wall) {
        var units = wall.units();
        var screw = wall.design().fixing().screw();
        double length = wall.wall().screwing().length();
        return screw.lengths().stream().anyMatch(listed -> Grid.same(listed, length))
                ? Optional.empty()
                : Optional.of(Finding.note(
                        TEXT,
                        "length of the wall screws",
                        units.length(length) + " is not among the lengths of '" + screw.name() + "': "
                                + screw.lengths().stream().map(units::length).collect(Collectors.joining(", "))
                                + ". Take one of these, or add it to the screw."));
    }

    /** The longest that goes no deeper. */
    private static List<Remedy> shorter(HungWall wall, double into) {
        double most = wall.wall().screwing().length() - into + CABLES;
        return wall.design().fixing().screw().lengths().stream()
                .filter(length -> !Grid.less(most, length))
                .max(Comparator.naturalOrder())
                .map(length -> new Stronger(wall).screws(length))
                .stream()
                .toList();
    }

    private static void beside(HungWall wall, CleatedWall cleated, Zone box, List<Finding> findings) {
        if (!box.kind().isElectrical() || cleated.wall().framing() instanceof Framing.Masonry) {
            return;
        }
        var units = wall.units();
        for (double stud : studs(cleated, box)) {
            var strips = cleated.strips().stream()
                    .filter(strip -> strip.studs().stream().anyMatch(x -> Grid.same(x, stud)))
                    .map(Strip::label)
                    .toList();
            if (!strips.isEmpty()) {
                findings.add(Finding.caution(
                        TEXT,
                        cleated.wall().name() + ", " + box.name() + ", stud at " + units.length(stud),
                        "Next to '" + box.name()
                                + "' its cable may run along or through this stud. Locate cables before" + " driving "
                                + strips.stream().collect(Collectors.joining(", ")) + "."));
            }
        }
    }

    /** The nearest on both sides, and those behind it. */
    private static List<Double> studs(CleatedWall cleated, Zone box) {
        var span = new Interval(box.itself().x0(), box.itself().x1());
        var all = cleated.studs().stream().map(stud -> stud.x()).toList();
        var left = all.stream().filter(x -> x < span.from()).max(Comparator.naturalOrder());
        var right = all.stream().filter(x -> x > span.to()).min(Comparator.naturalOrder());
        return Stream.of(left.stream(), all.stream().filter(span::holds), right.stream())
                .flatMap(part -> part)
                .distinct()
                .toList();
    }
}
