package org.standwright.design.wall.place;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.standwright.design.wall.built.Row;
import org.standwright.geom.Grid;

/** Centres of the studs that hold one row, from the left, mm. */
final class StudLine {
    private final double[] centres;

    private StudLine(double[] centres) {
        this.centres = centres;
    }

    /** Those that the strips of a row are screwed to. */
    static StudLine of(Row row) {
        return new StudLine(row.strips().stream()
                .flatMap(strip -> strip.studs().stream())
                .mapToDouble(stud -> stud)
                .sorted()
                .toArray());
    }

    /** Half way from each to the next. */
    StudLine middles() {
        return new StudLine(IntStream.range(1, centres.length)
                .mapToDouble(i -> (centres[i - 1] + centres[i]) / 2)
                .toArray());
    }

    /** How many lie from one place to another, both included. */
    int between(double from, double to) {
        return Math.max(0, firstFrom(to + 2 * Grid.STEP) - firstFrom(from));
    }

    /** The first and the last from one place to another: none, one or two. */
    double[] ends(double from, double to) {
        int first = firstFrom(from);
        int count = between(from, to);
        return switch (count) {
            case 0 -> new double[0];
            case 1 -> new double[] {centres[first]};
            default -> new double[] {centres[first], centres[first + count - 1]};
        };
    }

    /** Index of the first that is not before a place. */
    private int firstFrom(double place) {
        int at = Arrays.binarySearch(centres, place - Grid.STEP);
        return at < 0 ? -at - 1 : at;
    }
}
