package org.standwright.check.bending;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;

/** How far a bottom that stands on casters or levelers at its ends sags under its partitions. */
public final class BottomSag implements Rule {
    private static final RuleText TEXT = new RuleText(
            "bottom-sag",
            "Does the bottom sag between the casters or levelers?",
            "sag = sum of W b x (L^2 - b^2 - x^2) / (6 L E I) x (1 + kdef), at its greatest",
            "Lies on the strips along the sides, or on casters or levelers, without being held down; its layers slide on"
                    + " each other. Each partition brings down its share of machine, top, drawers and shelves; what back and"
                    + " sub-top would take off it is left out. Full for years.",
            ShelfSag.SOURCE);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        if (ShelfSag.isHeldUnderPartitions(loaded.design().support())) {
            return List.of();
        }
        var units = loaded.units();
        var stand = loaded.stand();
        var bottom = Named.part(stand, "bottom");
        var gap = gap(stand, bottom);
        var loads = new LevelLoads(loaded).onFloor(bottom, gap.x0(), gap.x1());
        double load = loads.stream().mapToDouble(SpanLoad::total).sum();
        var span = new Sagging(
                gap, new SimpleSpan(gap.length(), stiffness(stand, bottom, loaded), loads), GrainWay.creep(bottom));
        return List.of(Finding.judged(
                        TEXT,
                        "bottom",
                        new Gauge(Quantity.SAG, span.sag(), ShelfSag.limit(gap.length())),
                        "Over " + units.length(gap.length()) + " " + gap.words() + " and under " + units.force(load)
                                + " it sags " + Quantity.SAG.words(span.sag(), units) + " in the course of years.")
                .with(span.inputs())
                .with(new Input("W", "load, itself included", Quantity.FORCE, load))
                .remedies(List.of(Stiffer.doubledBottom(), Stiffer.thickerCarcass(loaded.design()))));
    }

    /** Between the inner edges of the strips, or between the middles of what a doubled bottom stands on. */
    private static Gap gap(Stand stand, PlacedPart bottom) {
        var strips = under(stand, bottom)
                .filter(part -> !isWhole(part, stand))
                .sorted(Comparator.comparingDouble(part -> part.box().min().x()))
                .toList();
        if (!strips.isEmpty()) {
            return Gap.between(strips.get(0), strips.get(strips.size() - 1));
        }
        var feet = stand.assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.CASTER || block.kind() == Block.Kind.LEVELER)
                .sorted(Comparator.comparingDouble(block -> block.box().centre().x()))
                .toList();
        var first = feet.get(0);
        var last = feet.get(feet.size() - 1);
        return new Gap(
                first.label(),
                last.label(),
                first.box().centre().x(),
                last.box().centre().x());
    }

    private static double stiffness(Stand stand, PlacedPart bottom, LoadedStand loaded) {
        return ShelfSection.of(bottom, loaded.design()).stiffness()
                + layers(stand)
                        .mapToDouble(part -> GrainWay.section(
                                        part, Axis.X_PLUS, part.box().size().y())
                                .stiffness())
                        .sum();
    }

    /** Those of a doubled bottom. */
    private static Stream<PlacedPart> layers(Stand stand) {
        return support(stand).filter(part -> isWhole(part, stand));
    }

    private static Stream<PlacedPart> under(Stand stand, PlacedPart bottom) {
        return support(stand)
                .filter(part ->
                        Grid.same(part.box().max().z(), stand.carcass().min().z()));
    }

    private static boolean isWhole(PlacedPart part, Stand stand) {
        return Grid.same(part.box().size().x(), stand.carcass().size().x());
    }

    private static Stream<PlacedPart> support(Stand stand) {
        return stand.assembly().groups().stream()
                .filter(group -> group.name().equals("support"))
                .flatMap(group -> group.parts().stream());
    }
}
