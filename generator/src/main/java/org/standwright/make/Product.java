package org.standwright.make;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.standwright.advice.Advice;
import org.standwright.assembly.Assembly;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.Furniture;
import org.standwright.export.CheckTextWriter;
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
        Furniture furniture,
        AssemblySolids solids,
        CutList cutList,
        SheetPlan plan,
        List<Finding> findings,
        Optional<Advice> savings) {
    public Product {
        findings = List.copyOf(findings);
    }

    /** Works a design out for files, what would save a sheet included. Throws as {@link #of(Design, Fineness)} does. */
    public static Product of(Design design) {
        return of(design, Effort.USUAL);
    }

    /** The same with this much effort for the sheet plan. */
    public static Product of(Design design, Effort effort) {
        var product = of(design, effort, assembly -> AssemblySolids.begin(assembly, Fineness.FILE));
        return product.with(product.furniture.accept(new Saved(product.cutList, product.plan)));
    }

    /**
     * Works a design out, the solids beside the sheets.
     *
     * @throws org.standwright.design.ImpossibleDesignException when it cannot be built
     */
    public static Product of(Design design, Fineness fineness) {
        return of(design, Effort.USUAL, assembly -> AssemblySolids.begin(assembly, fineness));
    }

    /** Works an edited design out as {@link #of} does; solids of parts that are still the same are taken over. */
    public Product edited(Design design) {
        return of(design, Effort.USUAL, solids::beginRebuilding);
    }

    private static Product of(Design design, Effort effort, Function<Assembly, Supplier<AssemblySolids>> begin) {
        var furniture = design.accept(new Building());
        var building = begin.apply(furniture.assembly());
        var cutList = CutList.of(furniture);
        var plan = planned(design, cutList, effort);
        var solids = building.get();
        var findings = furniture.accept(new Judged(solids));
        return new Product(furniture, solids, cutList, plan, findings, Optional.empty());
    }

    /** What would save a sheet, if the design says what may change, without its solids. Throws as {@link #of(Design)} does. */
    public static Optional<Advice> savingsOf(Design design) {
        var furniture = design.accept(new Building());
        var cutList = CutList.of(furniture);
        return furniture.accept(new Saved(cutList, planned(design, cutList, Effort.USUAL)));
    }

    private Product with(Optional<Advice> advice) {
        return new Product(furniture, solids, cutList, plan, findings, advice);
    }

    /** A job that no plan can do is a design that cannot be built. */
    private static SheetPlan planned(Design design, CutList cutList, Effort effort) {
        try {
            return SheetPlanner.plan(Stock.of(design), cutList, effort);
        } catch (ImpossiblePlanException refusal) {
            throw new ImpossibleDesignException(refusal.field(), refusal.getMessage(), List.of());
        }
    }

    /** What its maker reads back. */
    public Units units() {
        return furniture.design().unit();
    }

    /** Findings that say not to build it like this, and that nobody accepted. */
    public List<Finding> stops() {
        return findings.stream().filter(Finding::isStop).toList();
    }

    public boolean hasStops() {
        return !stops().isEmpty();
    }

    /** What it comes to, as text: its sizes and what is in it. */
    public void writeOverview(OutputStream out) throws IOException {
        furniture.accept(new Overview()).writeTo(out);
    }

    /** What the rules found, as text. */
    public void writeChecks(OutputStream out) throws IOException {
        CheckTextWriter.write(furniture, findings, out);
    }

    /** All of it as JSON. */
    public void writeReport(OutputStream out) throws IOException {
        ReportJsonWriter.write(furniture, cutList, plan, findings, savings, solids, out);
    }

    /** The cuts of all sheets as a table. */
    public void writeCuts(OutputStream out) throws IOException {
        CutsCsvWriter.write(plan, cutList, SecondStage.of(furniture).labels(cutList), units(), out);
    }
}
