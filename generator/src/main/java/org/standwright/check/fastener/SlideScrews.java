package org.standwright.check.fastener;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.Weight;
import org.standwright.design.built.DrawerLayout;
import org.standwright.unit.Gravity;

/**
 * The screws of bought slides, the fullest drawer open as far as it goes: those of the cabinet members carry it as a
 * cantilever, those on the box where it weighs; the most loaded one of all, and another where the wood is not rated.
 *
 * <p>A thin metal member holds the screw's head in place but lets it tilt. The same happens in the middle of a joint of two
 * equal pieces of wood: by symmetry the screw carries no moment from one to the other. So the yield modes of such a joint,
 * as deep in either as the screw is in the panel, stand in for the metal, whose own bearing strength is not asked for.
 */
public final class SlideScrews implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "slide-screws",
            "Do the screws of the slides carry the fullest drawer?",
            "F = W/2 |1/n + (xm + a) (xm - x) / sum (x - xm)^2|",
            "Half of the drawer hangs on each slide. The metal counts as a second piece of the same wood, as thick as the "
                    + "screw is deep in the first. A metric screw counts as the thickest numbered one that is not "
                    + "thicker; plywood as wood of specific gravity 0.42. NDS rates no screw with less than 6 diameters in "
                    + "the wood; beyond its allowable load there is no more than a note here: the maker of the slides rates "
                    + "them on screws of his own.",
            "yield modes of NDS 2018 12.3.1, as quoted; own derivation of the force");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var rows = stand.stand().bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .flatMap(drawer -> loaded(stand, drawer))
                .toList();
        var findings = new ArrayList<Finding>();
        rows.stream()
                .filter(row -> row.limit(stand).isPresent())
                .max(Comparator.comparingDouble(
                        row -> row.force() / row.limit(stand).orElseThrow().first()))
                .ifPresent(row -> findings.add(judged(stand, row)));
        rows.stream()
                .filter(row -> row.limit(stand).isEmpty())
                .max(Comparator.comparingDouble(Loaded::force))
                .ifPresent(row -> findings.add(Finding.note(
                        TEXT,
                        row.subject(),
                        words(stand, row)
                                + " Screws in this wood are not rated here: the rating of the slides counts on "
                                + "those that their maker names.")));
        return findings;
    }

    private static Finding judged(LoadedStand stand, Loaded row) {
        return Finding.judged(
                        TEXT,
                        row.subject(),
                        new Gauge(Quantity.FORCE, row.force(), row.limit(stand).orElseThrow()),
                        words(stand, row))
                .with(
                        new Input("W", "weight of the drawer, full", Quantity.FORCE, row.weight()),
                        new Input("n", "screws", Quantity.COUNT, row.count()),
                        new Input("a", "its middle in front of the first screw", Quantity.LENGTH, row.ahead()))
                .remedies(List.of(Remedy.ofStand("one drawer more in each column", new DrawerCount(1)::in)));
    }

    private static String words(LoadedStand stand, Loaded row) {
        var units = stand.units();
        return "Full and open as far as it goes, it puts " + units.force(row.force()) + " on one of the " + row.count()
                + " screws that hold its slide to the " + row.row().part() + ", "
                + units.length(row.row().into()) + " deep."
                + (row.isShallow(stand) ? " That is no more than the screw's tip." : "");
    }

    private static Stream<Loaded> loaded(LoadedStand stand, DrawerLayout drawer) {
        var subject = "drawer " + drawer.name();
        double weight = Gravity.newtons(Masses.ofGroup(stand, subject));
        var middle = middle(stand, subject);
        return middle.isEmpty()
                ? Stream.empty()
                : SlideRow.of(stand.stand(), drawer).stream()
                        .map(row -> new Loaded(
                                subject, row, weight, middle.getAsDouble() - (row.onBox() ? 0 : drawer.travel())));
    }

    /** Where a drawer weighs along y with everything closed, mm; nothing of one that weighs nothing. */
    private static OptionalDouble middle(LoadedStand stand, String drawer) {
        double mass = Masses.ofGroup(stand, drawer);
        return mass == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(stand.weights().stream()
                                .filter(weight -> weight.group().equals(drawer))
                                .mapToDouble((Weight weight) ->
                                        weight.mass() * weight.centre().y())
                                .sum()
                        / mass);
    }

    /**
     * Screws under their load.
     *
     * @param weight of the whole drawer, N
     * @param at where it acts, along y as the screws' places, mm
     */
    private record Loaded(String subject, SlideRow row, double weight, double at) {
        double force() {
            return weight / 2 * row.screws().worst(at);
        }

        int count() {
            return row.screws().places().size();
        }

        double ahead() {
            return row.screws().places().stream()
                            .mapToDouble(place -> place)
                            .min()
                            .orElseThrow()
                    - at;
        }

        boolean isShallow(LoadedStand stand) {
            return NumberedScrew.largestWithin(stand.design().screws().slide().diameter())
                    .filter(screw -> row.into() <= screw.tip())
                    .isPresent();
        }

        /** Nothing where screws in the wood are not rated, or where no more than half of their tips is in it. */
        Optional<Limit> limit(LoadedStand stand) {
            var screw =
                    NumberedScrew.largestWithin(stand.design().screws().slide().diameter());
            var wood = HoldingWood.of(row.material());
            return screw.filter(numbered -> row.into() > numbered.tip() / 2)
                    .flatMap(numbered -> wood.map(holding -> limit(numbered, holding.value())));
        }

        private Limit limit(NumberedScrew screw, double gravity) {
            double bears = row.into() - screw.tip() / 2;
            return ScrewLimits.noted(
                    SingleShear.along(screw, row.into(), bears, gravity, gravity), LoadDuration.PERMANENT);
        }
    }
}
