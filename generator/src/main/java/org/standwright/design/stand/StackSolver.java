package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.HeightStack;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.column.Column;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Reference;
import org.standwright.design.support.SupportPlan;
import org.standwright.geom.Grid;

/**
 * Solves the height stack for the carcass: working height less support, worktop and machine (references 6.3, own
 * derivation), within what the drawers need and the sheet allows.
 */
public final class StackSolver {
    /** The highest working height that a design file may ask for, mm. */
    private static final double HIGHEST = 2500;

    private final StandDesign design;
    private final List<Term> below;
    private final List<Term> above;

    StackSolver(StandDesign design, SupportPlan support) {
        this.design = design;
        this.below = support.terms();
        this.above = above(design);
    }

    HeightStack solve() {
        double carcass = carcass();
        reachable(carcass);
        var terms = new ArrayList<>(below);
        terms.add(Term.fixed("carcass", carcass));
        terms.addAll(above);
        var stack = new HeightStack(terms, design.workingHeight().height());
        new BesideFit(design, stack).check(carcass - leastCarcass());
        return stack;
    }

    /** Height of the carcass's underside above the floor, mm. */
    double floorToCarcass() {
        return below.stream().mapToDouble(Term::height).sum();
    }

    /** Height left to the carcass, mm. */
    double carcass() {
        return design.workingHeight().height() - others();
    }

    private static List<Term> above(StandDesign design) {
        var terms = new ArrayList<Term>();
        var worktop = design.worktop();
        for (int layer = 1; layer <= worktop.layers(); layer++) {
            terms.add(Term.fixed(
                    worktop.layers() == 1 ? "worktop" : "worktop layer " + layer,
                    worktop.sheet().material().thickness()));
        }
        var machine = design.machine();
        var reference = machine.reference();
        design.place().shims().ifPresent(shims -> terms.add(BesideFit.shims(shims)));
        if (reference.kind() != Reference.Kind.WORKTOP) {
            terms.add(Term.fixed(
                    machine.feet() > 0 ? "machine feet (on)" : "machine feet (none, or off)", machine.feet()));
        }
        terms.add(new Term(reference.kind().words(), reference.height(), reference.less(), reference.more()));
        return terms;
    }

    private double others() {
        return floorToCarcass() + above.stream().mapToDouble(Term::height).sum();
    }

    private void reachable(double carcass) {
        double least = leastCarcass();
        if (Grid.less(carcass, least)) {
            throw tooLow(carcass, least);
        }
        var sheet = design.carcass().sheet();
        double most = sheet.length() - design.saw().trim().offLength();
        if (Grid.less(most, carcass)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/workingHeight",
                    "A working height of " + units.length(design.workingHeight().height()) + " leaves "
                            + units.length(carcass) + " to the carcass, longer than the " + units.length(most)
                            + " that a sheet of " + sheet.material().name() + " gives after trimming.",
                    List.of("The nearest possible working height is "
                            + units.length(Exact.onTapeDown(units, others() + most)) + ", or use a longer sheet."));
        }
    }

    /** The lowest carcass that what is in every bay can stand in, mm. */
    private double leastCarcass() {
        double opening = 0;
        for (int bay = 0; bay < design.bays().size(); bay++) {
            opening = Math.max(opening, Column.ofBay(design, bay).least());
        }
        return opening + 2 * panel();
    }

    private double panel() {
        return design.carcass().sheet().material().thickness();
    }

    private ImpossibleDesignException tooLow(double carcass, double least) {
        var units = design.unit();
        double missing = least - carcass;
        var ways = new ArrayList<String>();
        double nearest = Exact.onTapeUp(units, design.workingHeight().height() + missing);
        boolean reachable = !Grid.less(HIGHEST, nearest);
        ways.add(
                reachable
                        ? "The nearest possible working height is " + units.length(nearest) + "."
                        : "Put fewer or lower things into its bays: working heights end at " + units.length(HIGHEST)
                                + ".");
        if (!Grid.less(floorToCarcass(), missing)) {
            ways.add("Or keep it and use a support " + Exact.up(units, missing) + " lower: now it is "
                    + units.length(floorToCarcass()) + ".");
        }
        double layer = design.worktop().sheet().material().thickness();
        if (design.worktop().layers() == 2 && !Grid.less(layer, missing)) {
            ways.add("Or keep it and make the worktop of one layer.");
        }
        if (reachable && !Grid.less(carcass, Column.LEAST + 2 * panel())) {
            ways.add("Or put fewer or lower things into its bays.");
        }
        String left = carcass > 0
                ? "leaves " + units.length(carcass) + " to the carcass"
                : "is used up by what lies under and over the carcass (" + units.length(others()) + ")";
        return new ImpossibleDesignException(
                "/workingHeight",
                "A working height of " + units.length(design.workingHeight().height()) + " " + left
                        + ", but what is in its bays needs " + units.length(least) + ".",
                ways);
    }
}
