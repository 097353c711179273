package org.standwright.make;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.standwright.advice.Advice;
import org.standwright.advice.Cures;
import org.standwright.advice.SavingSearch;
import org.standwright.assembly.Assembly;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.rules.Checks;
import org.standwright.cutlist.CutList;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.export.CutsCsvWriter;
import org.standwright.export.ReportJsonWriter;
import org.standwright.packet.words.SecondStage;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.unit.Units;

/**
 * Everything that was worked out from one design.
 *
 * @param savings what would save a sheet, where the design says what may change; looked for only when files are made
 */
public record Product(
        Stand stand,
        AssemblySolids solids,
        CutList cutList,
        SheetPlan plan,
        List<Finding> findings,
        Optional<Advice> savings) {
    public Product {
        findings = List.copyOf(findings);
    }

    /** Works a design out for files, what would save a sheet included. Throws as {@link #of(StandDesign, Fineness)} does. */
    public static Product of(StandDesign design) {
        return of(design, Effort.USUAL);
    }

    /** The same with this much effort for the sheet plan. */
    public static Product of(StandDesign design, Effort effort) {
        var product = of(design, effort, assembly -> AssemblySolids.begin(assembly, Fineness.FILE));
        return product.with(SavingSearch.of(product.stand, product.cutList, product.plan));
    }

    /**
     * Works a design out, the solids beside the sheets.
     *
     * @throws org.standwright.design.ImpossibleDesignException when it cannot be built
     */
    public static Product of(StandDesign design, Fineness fineness) {
        return of(design, Effort.USUAL, assembly -> AssemblySolids.begin(assembly, fineness));
    }

    /** Works an edited design out as {@link #of} does; solids of parts that are still the same are taken over. */
    public Product edited(StandDesign design) {
        return of(design, Effort.USUAL, solids::beginRebuilding);
    }

    private static Product of(StandDesign design, Effort effort, Function<Assembly, Supplier<AssemblySolids>> begin) {
        var stand = StandBuilder.build(design);
        var building = begin.apply(stand.assembly());
        var cutList = CutList.of(stand);
        var plan = planned(design, cutList, effort);
        var solids = building.get();
        var loaded = LoadedStand.of(stand, solids);
        var findings = Cures.of(loaded, solids, Checks.of(loaded));
        return new Product(stand, solids, cutList, plan, findings, Optional.empty());
    }

    /** What would save a sheet, if the design says what may change, without its solids. Throws as {@link #of(StandDesign)} does. */
    public static Optional<Advice> savingsOf(StandDesign design) {
        var stand = StandBuilder.build(design);
        var cutList = CutList.of(stand);
        return SavingSearch.of(stand, cutList, planned(design, cutList, Effort.USUAL));
    }

    private Product with(Optional<Advice> advice) {
        return new Product(stand, solids, cutList, plan, findings, advice);
    }

    /** A job that no plan can do is a design that cannot be built. */
    private static SheetPlan planned(StandDesign design, CutList cutList, Effort effort) {
        try {
            return SheetPlanner.plan(Stock.of(design), cutList, effort);
        } catch (ImpossiblePlanException refusal) {
            throw new ImpossibleDesignException(refusal.field(), refusal.getMessage(), List.of());
        }
    }

    /** What its maker reads back. */
    public Units units() {
        return stand.design().unit();
    }

    /** Findings that say not to build it like this, and that nobody accepted. */
    public List<Finding> stops() {
        return findings.stream().filter(Finding::isStop).toList();
    }

    public boolean hasStops() {
        return !stops().isEmpty();
    }

    /** All of it as JSON. */
    public void writeReport(OutputStream out) throws IOException {
        ReportJsonWriter.write(stand, cutList, plan, findings, savings, solids, out);
    }

    /** The cuts of all sheets as a table. */
    public void writeCuts(OutputStream out) throws IOException {
        CutsCsvWriter.write(plan, SecondStage.of(stand).labels(cutList), units(), out);
    }
}
