package org.standwright.check.fastener;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.standwright.assembly.Hardware;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Screw;

/**
 * Screws as a stand's list of hardware has them.
 *
 * @param length overall, mm
 * @param use what they are for, as the list says it
 */
public record BoughtScrew(Screw family, double length, String use) {
    /** All that the list names, in its order. */
    public static List<BoughtScrew> of(Stand stand) {
        var screws = stand.design().screws();
        return stand.assembly().hardware().stream()
                .flatMap(line ->
                        Stream.of(screws.panel(), screws.slide()).distinct().flatMap(family -> of(family, line, stand)))
                .toList();
    }

    /** Length of the longest whose use begins like this, mm. */
    public static OptionalDouble length(Stand stand, String use) {
        return of(stand).stream()
                .filter(screw -> screw.use().startsWith(use))
                .mapToDouble(BoughtScrew::length)
                .max();
    }

    private static Stream<BoughtScrew> of(Screw family, Hardware line, Stand stand) {
        var units = stand.design().unit();
        return family.lengths().stream()
                .filter(length -> line.item().equals(family.name() + " x " + units.length(length)))
                .map(length -> new BoughtScrew(family, length, line.use()));
    }
}
