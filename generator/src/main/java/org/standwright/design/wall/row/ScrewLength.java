package org.standwright.design.wall.row;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Screw;
import org.standwright.design.wall.Framing;
import org.standwright.geom.Grid;

/**
 * The length of the screws that hold strips: the longest that goes no deeper into any wall's studs than cables may lie, if
 * it holds in all of them; else the shortest that does.
 */
final class ScrewLength {
    /**
     * Cables in studs lie deeper than this, mm: 1 1/4 in, rounded (NEC 300.4, from memory, in references 4).
     */
    private static final double CABLES = 32;

    /** How deep a thread holds in wood, in diameters (common practice, no source). */
    private static final double HOLDS = 6;

    /** Longer than any screw, mm. */
    private static final double LONGEST_SOLD = 1000;

    private final WallDesign design;
    private final Screw screw;
    private final double least;
    private final double most;

    /**
     * @param under how much of the strip is under a head, mm
     */
    ScrewLength(WallDesign design, double under) {
        this.design = design;
        this.screw = design.fixing().screw();
        this.least = under
                + design.walls().stream()
                        .mapToDouble(wall -> wall.framing().covering() + holds(wall.framing()))
                        .max()
                        .orElseThrow();
        this.most = under
                + design.walls().stream()
                        .mapToDouble(wall -> wall.framing().covering() + cables(wall.framing()))
                        .min()
                        .orElseThrow();
    }

    /** Into wood 6 diameters; through an anchor, and a diameter beyond (common practice, no source). */
    private double holds(Framing framing) {
        return framing instanceof Framing.Masonry masonry
                ? masonry.depth() + screw.diameter()
                : HOLDS * screw.counted();
    }

    private static double cables(Framing framing) {
        return framing instanceof Framing.Masonry ? 2 * LONGEST_SOLD : CABLES;
    }

    double length() {
        return design.fixing().length().orElseGet(this::chosen);
    }

    private double chosen() {
        var holding = screw.lengths().stream()
                .filter(length -> !Grid.less(length, least))
                .toList();
        if (holding.isEmpty()) {
            throw tooShort();
        }
        return most > LONGEST_SOLD
                ? holding.get(0)
                : holding.stream()
                        .filter(length -> !Grid.less(most, length))
                        .reduce((shorter, longer) -> longer)
                        .orElse(holding.get(0));
    }

    private ImpossibleDesignException tooShort() {
        var units = design.unit();
        var sold = screw.lengths().isEmpty()
                ? "but none is listed"
                : "but it is sold in "
                        + screw.lengths().stream().map(units::length).collect(Collectors.joining(", "));
        return new ImpossibleDesignException(
                "/fixing/screw",
                "Through strip and covering and far enough into what holds it (6 diameters into a stud, through an"
                        + " anchor and a diameter beyond), " + screw.name() + " must be " + Exact.up(units, least)
                        + " long, " + sold + ".",
                List.of("Use a screw " + Exact.up(units, least) + " long or more."));
    }
}
