package org.standwright.viewer.scene.measure;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/**
 * What was found between two faces, or of one.
 *
 * @param mm the length measured: between planes, between axes, at the nearest, or the depth of a hole
 * @param degrees between the two planes, 0 for parallel to 90 for square; a wall of a hole counts by its axis
 * @param diameter of a hole or post, mm; 0 of all else
 * @param line to draw, from the first face to the second
 */
public record Measured(Kind kind, double mm, double degrees, double diameter, Segment line) {
    /** What kind of length it is. */
    public enum Kind {
        /** Between planes that look away from each other: through wood, or over all. */
        OVER_ALL("from outside to outside"),
        /** Between planes that look at each other: room between them. */
        BETWEEN("between them"),
        /** Between planes that look the same way. */
        OFFSET("from one to the other"),
        /** Between faces that are not parallel, at the nearest. */
        NEAREST("at the nearest"),
        /** Between the axes of two parallel holes or posts. */
        CENTRES("from centre to centre"),
        /** Between an axis and a plane along it. */
        TO_CENTRE("from face to centre"),
        /** One hole. */
        HOLE("deep"),
        /** One post. */
        POST("long");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** What to write beside the line: '18 mm from outside to outside, left to right'. */
    public String words(Units units) {
        return switch (kind) {
            case HOLE, POST -> "\u00d8 " + units.length(diameter) + ", " + units.length(mm) + " " + kind.words;
            case NEAREST -> angle() + ", " + (isNothing() ? "touching" : units.length(mm) + " " + kind.words);
            case OVER_ALL, BETWEEN, OFFSET -> isNothing() ? "in one plane" : along(units);
            case CENTRES, TO_CENTRE -> along(units);
        };
    }

    private String along(Units units) {
        return units.length(mm) + " " + kind.words + direction();
    }

    private boolean isNothing() {
        return Grid.same(mm, 0);
    }

    private String angle() {
        var number = String.format(Locale.ROOT, "%.1f", degrees);
        return "at " + (number.endsWith(".0") ? number.substring(0, number.length() - 2) : number) + "\u00b0";
    }

    /** Which way the line runs, where that is along an axis. */
    private String direction() {
        var way = line.to().minus(line.from());
        var lengths = List.of(Math.abs(way.x()), Math.abs(way.y()), Math.abs(way.z()));
        var names = List.of("left to right", "front to back", "up and down");
        return IntStream.range(0, 3)
                .filter(axis -> lengths.get(axis) > 0 && Grid.same(lengths.get(axis), line.length()))
                .mapToObj(axis -> ", " + names.get(axis))
                .findFirst()
                .orElse("");
    }
}
