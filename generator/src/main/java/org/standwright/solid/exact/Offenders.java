package org.standwright.solid.exact;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Which of some regions that don't fit together go loose: round ones, and if there are none, the smallest. */
final class Offenders {
    private Offenders() {}

    static List<Integer> of(Model model, Collection<Integer> regions) {
        var round = regions.stream()
                .filter(region -> model.round(region).isPresent())
                .toList();
        return round.isEmpty()
                ? regions.stream()
                        .filter(region -> model.surface(region).isPresent())
                        .min(Comparator.comparingInt(model.regions()::triangles))
                        .stream()
                        .toList()
                : round;
    }
}
