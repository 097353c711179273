package org.standwright.check.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;
import org.standwright.check.balance.statics.Bodies;
import org.standwright.check.balance.statics.Body;
import org.standwright.check.balance.statics.Contact;
import org.standwright.check.balance.statics.SupportPolygon;
import org.standwright.check.balance.statics.TippingCase;

/** A loaded stand on its feet, with drawers and doors open or closed. */
final class Standing {
    private final LoadedStand loaded;
    private final List<Contact> feet;
    private final SupportPolygon polygon;
    private final List<Opening> openings;

    Standing(LoadedStand loaded) {
        this.loaded = loaded;
        this.feet = new Feet(loaded.stand()).contacts();
        this.polygon = SupportPolygon.of(feet);
        this.openings = new Openings(loaded.stand()).all();
    }

    LoadedStand loaded() {
        return loaded;
    }

    List<Contact> feet() {
        return feet;
    }

    SupportPolygon polygon() {
        return polygon;
    }

    List<Opening> openings() {
        return openings;
    }

    /** Drawers that only one of a bay can be open of at a time. */
    boolean isInterlocked() {
        return loaded.design().steady().interlock();
    }

    /** Everything closed. */
    TippingCase closed() {
        return TippingCase.standing(polygon, List.of(List.of(bodies(opening -> false))));
    }

    /** One of them open, everything else closed. */
    TippingCase open(Opening one) {
        return TippingCase.standing(polygon, List.of(List.of(bodies(one::equals))));
    }

    /** All drawers and doors open; of the drawers of a bay the worst only, where a lock lets no more open. */
    TippingCase allOpen() {
        if (!isInterlocked()) {
            return TippingCase.standing(polygon, List.of(List.of(bodies(opening -> true))));
        }
        var choices = new ArrayList<List<Bodies>>();
        var others = new ArrayList<>(loaded.weights());
        columns().values().forEach(column -> {
            var own = loaded.weights().stream()
                    .filter(weight -> of(weight, column).isPresent())
                    .toList();
            others.removeAll(own);
            choices.add(
                    column.stream().map(drawer -> bodies(own, drawer::equals)).toList());
        });
        choices.add(List.of(bodies(others, opening -> !opening.drawer())));
        return TippingCase.standing(polygon, choices);
    }

    /** Everything in it, closed. */
    List<Body> fullClosed() {
        return bodies(opening -> false).full().sure();
    }

    /** Everything in it, its drawers open; of those of a bay one only, where a lock lets no more open. */
    List<Body> fullDrawersOpen() {
        var open = columns().values().stream()
                .flatMap(column -> isInterlocked() ? column.stream().max(byShift()).stream() : column.stream())
                .toList();
        return bodies(open::contains).full().sure();
    }

    /** By how much an open drawer shifts the centre of mass. */
    private Comparator<Opening> byShift() {
        return Comparator.comparingDouble(drawer -> -drawer.travel().y()
                * loaded.weights().stream()
                        .filter(weight -> weight.group().equals(drawer.group()))
                        .mapToDouble(Weight::mass)
                        .sum());
    }

    /** The same stand with other contents in its drawers, and nothing else in it. */
    Standing filled(ToDoubleFunction<String> mass) {
        var others = loaded.weights().stream()
                .filter(weight -> weight.kind() != Weight.Kind.CONTENTS
                        || of(weight, openings).isPresent())
                .map(weight -> weight.kind() == Weight.Kind.CONTENTS
                        ? new Weight(
                                weight.what(),
                                weight.kind(),
                                weight.group(),
                                mass.applyAsDouble(weight.group()),
                                weight.centre())
                        : weight)
                .toList();
        return new Standing(new LoadedStand(loaded.stand(), others));
    }

    /** Drawers, by the bay that they are in. */
    private Map<String, List<Opening>> columns() {
        var columns = new LinkedHashMap<String, List<Opening>>();
        openings.stream()
                .filter(Opening::drawer)
                .forEach(drawer -> columns.computeIfAbsent(drawer.column(), column -> new ArrayList<>())
                        .add(drawer));
        return columns;
    }

    private Bodies bodies(Predicate<Opening> open) {
        return bodies(loaded.weights(), open);
    }

    private Bodies bodies(List<Weight> weights, Predicate<Opening> open) {
        var sure = new ArrayList<Body>();
        var contents = new ArrayList<Body>();
        for (var weight : weights) {
            var centre = of(weight, openings)
                    .filter(open)
                    .map(opening -> opening.open(weight.centre()))
                    .orElse(weight.centre());
            (weight.kind() == Weight.Kind.CONTENTS ? contents : sure).add(new Body(weight.mass(), centre));
        }
        return new Bodies(sure, contents);
    }

    private static Optional<Opening> of(Weight weight, List<Opening> some) {
        return some.stream()
                .filter(opening -> opening.group().equals(weight.group()))
                .findFirst();
    }
}
