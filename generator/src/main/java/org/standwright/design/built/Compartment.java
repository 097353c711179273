package org.standwright.design.built;

import java.util.List;
import java.util.stream.Stream;

/**
 * A part of a bay's height that is not divided again.
 *
 * @param bay name of the innermost bay that it belongs to
 */
public record Compartment(String bay, SectionLayout section) {
    /** From left to right, each bay from top to bottom. */
    public static List<Compartment> of(List<BayLayout> bays) {
        return bays.stream().flatMap(Compartment::in).toList();
    }

    private static Stream<Compartment> in(BayLayout bay) {
        return bay.sections().stream()
                .flatMap(section -> section instanceof SectionLayout.Divided divided
                        ? of(divided.bays()).stream()
                        : Stream.of(new Compartment(bay.name(), section)));
    }

    /** Heights of the undersides of its shelves above its lower edge, rising, mm. */
    public List<Double> shelves() {
        if (section instanceof SectionLayout.Open open) {
            return open.shelves();
        }
        return section instanceof SectionLayout.Closed closed ? closed.shelves() : List.of();
    }
}
