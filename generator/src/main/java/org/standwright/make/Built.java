package org.standwright.make;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import org.standwright.advice.Advice;
import org.standwright.assembly.Assembly;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.Furniture;
import org.standwright.router.RouterPlan;
import org.standwright.router.plan.RouterPlanner;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.unit.Units;

/**
 * A design with its boards: all that can be seen at once. What takes longer is asked of it step by step, so that a window
 * can show each answer when it is there; every answer is worked out anew.
 */
public record Built(Furniture furniture, AssemblySolids solids) {

    /** Throws {@link ImpossibleDesignException} when it cannot be built. */
    public static Built of(Design design, Fineness fineness) {
        return begin(design, assembly -> AssemblySolids.begin(assembly, fineness))
                .finished();
    }

    /** Builds an edited design as {@link #of} does; solids of parts that are still the same are taken over. */
    public Built edited(Design design) {
        return begin(design, solids::beginRebuilding).finished();
    }

    static Begun begin(Design design, Function<Assembly, Supplier<AssemblySolids>> solids) {
        var furniture = design.accept(new Building());
        var building = solids.apply(furniture.assembly());
        return new Begun(furniture, building);
    }

    /** A design whose solids are still being built. */
    record Begun(Furniture furniture, Supplier<AssemblySolids> building) {
        Built finished() {
            return new Built(furniture, building.get());
        }
    }

    /** All boards to cut, equal ones together, and the hardware. */
    public CutList cutList() {
        return CutList.of(furniture);
    }

    /**
     * How the sheets of its cut list are sawn.
     *
     * @param givenUp asked now and then
     * @throws ImpossibleDesignException when no plan can do it
     * @throws CancellationException once it was given up
     */
    public SheetPlan planned(CutList cutList, Effort effort, BooleanSupplier givenUp) {
        return plan(furniture.design(), cutList, effort, givenUp);
    }

    /** Where a router cuts the sheets of its cut list, if the design has one. Throws as {@link #planned} does. */
    public Optional<RouterPlan> routed(CutList cutList, Effort effort, BooleanSupplier givenUp) {
        var design = furniture.design();
        return design.router()
                .map(router -> possible(() -> RouterPlanner.plan(Stock.of(design), cutList, router, effort, givenUp)));
    }

    static SheetPlan plan(Design design, CutList cutList, Effort effort, BooleanSupplier givenUp) {
        return possible(() -> SheetPlanner.plan(Stock.of(design), cutList, effort, givenUp));
    }

    /** A job that no plan can do is a design that cannot be built. */
    private static <T> T possible(Supplier<T> plan) {
        try {
            return plan.get();
        } catch (ImpossiblePlanException refusal) {
            throw new ImpossibleDesignException(refusal.field(), refusal.getMessage(), List.of());
        }
    }

    /** What its rules find. */
    public List<Finding> found() {
        return furniture.accept(new Judged(solids));
    }

    /** The same findings in their order, those with a cure that have one; builds up to twenty other designs. */
    public List<Finding> cured(List<Finding> findings) {
        return furniture.accept(new Cured(solids, findings));
    }

    /** What would save a sheet of this plan, where the design says what may change. */
    public Optional<Advice> savings(CutList cutList, SheetPlan plan) {
        return furniture.accept(new Saved(cutList, plan));
    }

    /** What its maker reads back. */
    public Units units() {
        return furniture.design().unit();
    }
}
