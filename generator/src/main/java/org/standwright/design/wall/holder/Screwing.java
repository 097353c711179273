package org.standwright.design.wall.holder;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.kit.Screw;
import org.standwright.geom.Grid;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Recess;
import org.standwright.unit.Units;

/** Screws of the holders' family: how long, how far apart, how they are let in. */
record Screwing(WallDesign design) {
    /** The least that one holds in, mm; common practice, no source. */
    static final double LEAST_BITE = 8;
    /** From one to the next at most, mm. */
    private static final double APART = 200;
    /** From the ends of a board, mm. */
    private static final double FROM_END = 30;
    /** Head of a countersunk screw in diameters of its thread; common practice, no source. */
    private static final double HEAD = 2;

    Screw family() {
        return design.making().screw();
    }

    /** The longest through a board into the face of another that ends 2 mm short of its far face, mm. */
    double through(double first, double second, String what) {
        return between(first + LEAST_BITE, first + second - ScrewChoice.SHORT_OF_FACE, what);
    }

    /** The longest of at least and at most these lengths, mm. */
    double between(double least, double most, String what) {
        var units = design.unit();
        return longest(least, most)
                .orElseThrow(() -> new ImpossibleDesignException(
                        "/making/screw",
                        what + " takes a screw " + units.length(least) + " long or more, to hold, and "
                                + units.length(most) + " or less, to stay within; " + family().name() + " has none.",
                        List.of(
                                Grid.less(most, least)
                                        ? "Use a thicker board."
                                        : "Use a family of screws that has one, or a thicker board.")));
    }

    Optional<Double> longest(double least, double most) {
        return family().lengths().stream()
                .filter(length -> !Grid.less(length, least) && !Grid.less(most, length))
                .max(Comparator.naturalOrder());
    }

    /** '#8 screw x 30 mm'. */
    String item(double length) {
        return family().name() + " x " + design.unit().length(length);
    }

    /** Places along a board, evenly from end to end: two or more. */
    List<Double> places(double along) {
        double inset = FROM_END;
        int gaps = Math.max(1, (int) StrictMath.ceil((along - 2 * inset) / APART - Grid.STEP));
        return IntStream.rangeClosed(0, gaps)
                .mapToObj(i -> inset + i * (along - 2 * inset) / gaps)
                .toList();
    }

    /** Right through a board, its head sunk in at {@code face}. */
    Hole sunk(Face face, double x, double y, String purpose) {
        var bore = Hole.through(x, y, family().clearance(), purpose);
        return new Hole(face, x, y, bore.diameter(), bore.depth(), Optional.of(sink()), purpose);
    }

    private Recess sink() {
        double head = Math.max(HEAD * family().diameter(), family().clearance() + 1);
        return new Recess.Countersink(head, design.unit() == Units.MM ? 90 : 82);
    }
}
