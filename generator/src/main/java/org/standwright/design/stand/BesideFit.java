package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.HeightStack;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Reference;
import org.standwright.geom.Grid;

/**
 * Whether a stand can be set level with a surface beside it: on a floor that falls, some term of the stack has to give
 * way by the fall over the plan and 5 mm more (shop practice).
 */
final class BesideFit {
    private static final double SPARE = 5;

    private final StandDesign design;
    private final HeightStack stack;

    BesideFit(StandDesign design, HeightStack stack) {
        this.design = design;
        this.stack = stack;
    }

    /** Shims as a layer of the stack. */
    static Term shims(Range range) {
        return new Term(
                "shims under the machine", range.usual(), range.usual() - range.least(), range.most() - range.usual());
    }

    /**
     * @param spare height that the carcass could lose, mm
     */
    void check(double spare) {
        if (!(design.workingHeight() instanceof WorkingHeight.Beside beside)) {
            return;
        }
        var units = design.unit();
        if (Grid.less(beside.below(), 0)) {
            throw new ImpossibleDesignException(
                    "/workingHeight/below",
                    "The stand would be " + units.length(-beside.below()) + " above the " + beside.surface()
                            + " beside it, where boards would catch.",
                    List.of("Make it 0 for level, or more for below."));
        }
        double range = stack.highest() - stack.lowest();
        double needed = beside.fall() + SPARE;
        if (Grid.less(range, needed)) {
            throw new ImpossibleDesignException(
                    "/workingHeight",
                    "To stand level with the " + beside.surface() + " on a floor that falls "
                            + units.length(beside.fall()) + ", the stand has to be adjustable by "
                            + units.length(needed) + ", but it is by " + units.length(range) + ".",
                    ways(needed - range, needed, spare));
        }
    }

    private List<String> ways(double missing, double needed, double spare) {
        var ways = new ArrayList<String>();
        if (design.machine().reference().kind() != Reference.Kind.WORKTOP) {
            ways.add("Put shims under the machine, in 'place': " + shimsWritten(missing, spare) + ".");
        }
        ways.add((ways.isEmpty() ? "Stand" : "Or stand") + " it on levelers that can be set over "
                + Exact.up(design.unit(), needed) + " or more.");
        return ways;
    }

    /** As they are written in a design file: half used, where the carcass has that much to give. */
    private String shimsWritten(double missing, double spare) {
        var units = design.unit();
        var now = design.place().shims().orElse(new Range(0, 0, 0));
        double most = Exact.onTapeUp(units, now.most() + missing);
        double half = Exact.onTape(units, (now.least() + most) / 2);
        double usual = Grid.less(spare, half - now.usual()) || half < now.usual() ? now.usual() : half;
        return "\"shims\": {\"least\": \"" + Exact.length(units, now.least()) + "\", \"usual\": \""
                + Exact.length(units, usual) + "\", \"most\": \"" + Exact.length(units, most) + "\"}";
    }
}
