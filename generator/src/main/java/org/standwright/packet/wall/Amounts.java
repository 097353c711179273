package org.standwright.packet.wall;

import java.util.List;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Strip;
import org.standwright.packet.words.Counted;
import org.standwright.unit.Units;

/** How much there is of one wall, in words. */
record Amounts(CleatedWall wall, Units units) {
    /** '5.32 m² (57.3 ft²)', in both systems, the maker's own first. */
    String bare() {
        double size = wall.bare().size();
        var metric = Units.MM.area(size);
        var feet = Units.INCH.area(size);
        return units == Units.MM ? metric + " (" + feet + ")" : feet + " (" + metric + ")";
    }

    String sentence() {
        return "Bare area " + bare() + ". " + Counted.of(rows(), "row") + " with "
                + Counted.of(wall.strips().size(), "strip") + ", together " + units.run(length()) + " long, held by "
                + Counted.of(screws(), "screw") + ".";
    }

    long rows() {
        return wall.rows().stream().filter(row -> !row.strips().isEmpty()).count();
    }

    double length() {
        return wall.strips().stream()
                .mapToDouble(strip -> strip.along().length())
                .sum();
    }

    long screws() {
        return screws(wall.strips());
    }

    private static long screws(List<Strip> strips) {
        return strips.stream()
                .mapToLong(strip -> (long) strip.studs().size() * strip.screws().size())
                .sum();
    }
}
