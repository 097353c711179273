package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.PlateOpening;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;
import org.standwright.unit.Gravity;

/** How far the strips of top before and behind a plate's opening sag under the machine that hangs from the plate. */
public final class PlateOpeningSag implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "plate-opening",
            "Does the top sag beside the plate?",
            "sag = beam L under W/2, even over the plate's width, x (1 + kdef)",
            "The strips before and behind the opening each bear half of the machine, and themselves; the strips at its"
                    + " ends bear nothing. The machine stays for years.",
            "superposed beams, Wood Handbook FPL-GTR-190 chapter 9; creep EN 1995-1-1 table 3.2, as quoted; caution above"
                    + " 0.2 mm is shop practice, stop above 0.6 mm our own choice");

    private static final Limit LIMIT = Limit.atMost(0.2, 0.6);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        if (stand.machine().isPresent()) {
            return List.of();
        }
        return stand.design().worktop().plate().stream()
                .flatMap(plate -> strips(stand, plate).max(Comparator.comparingDouble(Sagging::sag)).stream()
                        .map(worst -> finding(plate, worst, loaded)))
                .toList();
    }

    private static Stream<Sagging> strips(Stand stand, PlateOpening plate) {
        var area = plate(stand);
        var top = TopLayers.of(stand);
        var worktop = stand.worktop();
        var subTop = top.subTop().box();
        double rabbet = plate.fit() / 2;
        return Uprights.of(stand).gap(subTop.min().z(), area.centre().x()).stream()
                .flatMap(gap -> Stream.of(
                                strip(
                                        stand,
                                        gap,
                                        area.min().y() - rabbet - worktop.min().y(),
                                        area.min().y()
                                                + plate.ledge()
                                                - subTop.min().y()),
                                strip(
                                        stand,
                                        gap,
                                        worktop.max().y() - area.max().y() - rabbet,
                                        subTop.max().y() - area.max().y() + plate.ledge()))
                        .flatMap(Optional::stream));
    }

    /** Nothing where there is no strip at all. */
    private static Optional<Sagging> strip(Stand stand, Gap gap, double ofWorktop, double ofSubTop) {
        double worktop = Math.max(0, ofWorktop);
        double subTop = Math.max(0, ofSubTop);
        if (worktop + subTop == 0) {
            return Optional.empty();
        }
        var top = TopLayers.of(stand);
        var area = plate(stand);
        double x0 = Math.max(0, area.min().x() - gap.x0());
        double x1 = Math.min(gap.length(), area.max().x() - gap.x0());
        double half = Gravity.newtons(stand.design().machine().mass()) / 2;
        var loads = new ArrayList<SpanLoad>();
        loads.add(new SpanLoad(x0, x1, half));
        loads.add(new SpanLoad(0, gap.length(), top.weight(worktop, subTop) * gap.length()));
        return Optional.of(
                new Sagging(gap, new SimpleSpan(gap.length(), top.stiffness(worktop, subTop), loads), top.creep()));
    }

    private static Box3 plate(Stand stand) {
        return stand.assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.PLATE)
                .map(Block::box)
                .findFirst()
                .orElseThrow();
    }

    private static Finding finding(PlateOpening plate, Sagging worst, LoadedStand loaded) {
        var units = loaded.units();
        double sag = worst.sag();
        double mass = loaded.design().machine().mass();
        return Finding.judged(
                        TEXT,
                        plate.name(),
                        new Gauge(Quantity.SAG, sag, LIMIT),
                        "The top beside it sags " + Quantity.SAG.words(sag, units) + " "
                                + worst.gap().words() + " in the course of years, under " + units.mass(mass) + ".")
                .with(worst.inputs())
                .remedies(List.of(
                        Stiffer.secondLayer(),
                        Stiffer.thickerWorktop(loaded.design()),
                        Stiffer.thickerCarcass(loaded.design())));
    }
}
