package org.standwright.design.support;

import java.util.Comparator;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.geom.Grid;
import org.standwright.part.Hole;
import org.standwright.part.Material;

/**
 * Two layers of the carcass's sheet, glued on each other: at least 34 mm of wood, sold as 36 mm, under every caster or
 * leveler (shop practice, common practice, no source).
 *
 * @param name in messages: 'caster block'
 * @param all of them in the height stack: 'caster blocks'
 */
record Layers(String name, String all, StandDesign design) {
    /** Wood below a recess in the upper layer, mm. */
    private static final double LEAST_WOOD = 3;
    /** Two layers of sheets sold as 18 mm or 3/4 in; the thinnest of them measure 17 mm (references 1.3). */
    private static final double LEAST_LAYER = 17;
    /** A screw from the bottom ends this far above the lower face of the layers, mm. */
    private static final double ABOVE_LOWER_FACE = 10;

    Material wood() {
        return design.carcass().sheet().material();
    }

    /** Of both layers, mm. */
    double height() {
        return 2 * wood().thickness();
    }

    Term term() {
        return Term.fixed(all + " (two layers)", height());
    }

    /** Refuses layers that a recess would go through, or that together are too thin for what hangs on them. */
    void check(double recessDepth) {
        double least = Math.max(recessDepth + LEAST_WOOD, LEAST_LAYER);
        if (Grid.less(wood().thickness(), least)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/carcass/sheet",
                    "A " + name + " of two layers of " + wood().name() + " is " + units.length(height())
                            + " thick; it takes layers of " + units.length(least) + " or more.",
                    List.of("Use a sheet of " + Exact.up(units, least) + " or more for the carcass, or a plinth."));
        }
    }

    /** The bores of one layer, in one order wherever they lie alike, so that equal layers are equal parts. */
    List<Hole> bores(List<Fixing> fixings, boolean upper) {
        return fixings.stream()
                .flatMap(fixing -> upper ? fixing.intoUpper().stream() : List.of(fixing.throughLayer()).stream())
                .sorted(Comparator.comparing(Hole::purpose)
                        .thenComparingDouble(Hole::x)
                        .thenComparingDouble(Hole::y))
                .toList();
    }

    /** A clearance hole in the carcass's bottom for a screw into the layers, in the assembly's x and y. */
    Hole screwHole(double x, double y) {
        return Hole.through(x, y, design.screws().panel().clearance(), name + " screw");
    }

    /** The screws that hold the layers to the carcass's bottom. */
    Hardware screws(int count) {
        double most = 3 * wood().thickness() - ABOVE_LOWER_FACE;
        double length = new ScrewChoice(design).panel(most, all + " screwed to the bottom");
        return new Hardware(
                design.screws().panel().name() + " x " + design.unit().length(length),
                count,
                all + ", down through the bottom");
    }
}
