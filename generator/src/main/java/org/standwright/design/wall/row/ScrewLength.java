package org.standwright.design.wall.row;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Screw;
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
        var coverings = design.walls().stream()
                .mapToDouble(wall -> wall.framing().covering())
                .summaryStatistics();
        this.least = under + coverings.getMax() + HOLDS * screw.counted();
        this.most = under + coverings.getMin() + CABLES;
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
        return holding.stream()
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
                "Through strip and covering and " + units.length(HOLDS * screw.counted())
                        + " (6 diameters) into a stud, " + screw.name() + " must be " + Exact.up(units, least)
                        + " long, " + sold + ".",
                List.of("Use a screw " + Exact.up(units, least) + " long or more."));
    }
}
