package org.standwright.make;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.standwright.advice.Advice;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.design.built.Furniture;
import org.standwright.drawing.Drawing;
import org.standwright.export.CheckTextWriter;
import org.standwright.export.CutsCsvWriter;
import org.standwright.export.ReportJsonWriter;
import org.standwright.packet.words.SecondStage;
import org.standwright.router.RouterPlan;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.plan.Effort;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.unit.Units;

/**
 * Everything that was worked out from one design.
 *
 * @param routed where a router cuts the sheets, for a design that has one; planned only when files are made
 * @param savings what would save a sheet, where the design says what may change; looked for only when files are made
 */
public record Product(
        Built built,
        CutList cutList,
        SheetPlan plan,
        Optional<RouterPlan> routed,
        List<Finding> findings,
        Optional<Advice> savings) {
    public Product {
        findings = List.copyOf(findings);
    }

    /**
     * Works a design out for files, what would save a sheet included.
     *
     * @throws org.standwright.design.ImpossibleDesignException when it cannot be built
     */
    public static Product of(Design design) {
        return of(design, Effort.USUAL);
    }

    /** The same with this much effort for the sheet plan. */
    public static Product of(Design design, Effort effort) {
        var product = checked(design, effort);
        return new Product(
                product.built,
                product.cutList,
                product.plan,
                product.built.routed(product.cutList, effort, () -> false),
                product.findings,
                product.built.savings(product.cutList, product.plan));
    }

    /** The same without what would save a sheet; the solids are built beside the sheets. */
    public static Product checked(Design design) {
        return checked(design, Effort.USUAL);
    }

    private static Product checked(Design design, Effort effort) {
        var begun = Built.begin(design, assembly -> AssemblySolids.begin(assembly, Fineness.FILE));
        var cutList = CutList.of(begun.furniture());
        var plan = Built.plan(design, cutList, effort, () -> false);
        var built = begun.finished();
        return new Product(built, cutList, plan, Optional.empty(), built.cured(built.found()), Optional.empty());
    }

    /** What would save a sheet, if the design says what may change, without its solids. Throws as {@link #of(Design)} does. */
    public static Optional<Advice> savingsOf(Design design) {
        var furniture = design.accept(new Building());
        var cutList = CutList.of(furniture);
        return furniture.accept(new Saved(cutList, Built.plan(design, cutList, Effort.USUAL, () -> false)));
    }

    public Furniture furniture() {
        return built.furniture();
    }

    public AssemblySolids solids() {
        return built.solids();
    }

    /** What its maker reads back. */
    public Units units() {
        return built.units();
    }

    /** Findings that say not to build it like this, and that nobody accepted. */
    public List<Finding> stops() {
        return findings.stream().filter(Finding::isStop).toList();
    }

    public boolean hasStops() {
        return !stops().isEmpty();
    }

    /** The packet's pages as they are printed. Takes some tenths of a second. */
    public List<Drawing> pages() {
        return Papers.packet(this);
    }

    /** Every sheet on paper, material by material, as the files show it. Takes some tenths of a second. */
    public List<SheetPaper> sheets() {
        return SheetPaper.of(furniture(), cutList(), plan);
    }

    /** What it comes to, as text: its sizes and what is in it. */
    public void writeOverview(OutputStream out) throws IOException {
        furniture().accept(new Overview()).writeTo(out);
    }

    /** What the rules found, as text. */
    public void writeChecks(OutputStream out) throws IOException {
        CheckTextWriter.write(furniture(), findings, out);
    }

    /** All of it as JSON. */
    public void writeReport(OutputStream out) throws IOException {
        ReportJsonWriter.write(furniture(), cutList(), plan, routed, findings, savings, solids(), out);
    }

    /** The cuts of all sheets as a table. */
    public void writeCuts(OutputStream out) throws IOException {
        CutsCsvWriter.write(plan, cutList(), SecondStage.of(furniture()).labels(cutList()), units(), out);
    }
}
