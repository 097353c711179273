package org.standwright.check;

import org.standwright.design.built.Stand;
import org.standwright.design.column.Running;

/**
 * What a stand's support carries, kg.
 *
 * @param wood mass of all parts
 * @param contents mass of what the drawers hold, assumed
 */
public record Load(double wood, double machine, double contents) {
    /** Tools in a drawer, kg per mm³ of usable inside: 0.5 kg/dm³, our own guess; no standard's figure was found. */
    static final double CONTENTS = 0.5e-6;

    /** The load of a stand whose parts weigh {@code wood} kg, with every drawer full but within its slides' rating. */
    static Load of(Stand stand, double wood) {
        double rating = Running.of(stand.design()).rating().orElse(Double.POSITIVE_INFINITY);
        double contents = stand.bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .mapToDouble(drawer -> {
                    var inside = drawer.inside();
                    return Math.min(rating, inside.width() * inside.depth() * inside.height() * CONTENTS);
                })
                .sum();
        return new Load(wood, stand.design().machine().mass(), contents);
    }

    double total() {
        return wood + machine + contents;
    }

    /** What one of four supports must bear: a third of all, since on an uneven floor three carry everything. */
    static double onOneOfFour(double total) {
        return total / 3;
    }
}
