package org.standwright.export;

import static org.standwright.export.TextTable.Align.LEFT;
import static org.standwright.export.TextTable.Align.RIGHT;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.Furniture;
import org.standwright.design.kit.StockSheet;
import org.standwright.packet.words.BarsToBuy;
import org.standwright.packet.words.BlankSizes;
import org.standwright.packet.words.BoardWords;
import org.standwright.packet.words.CutListWords;
import org.standwright.packet.words.MemberNames;
import org.standwright.packet.words.ProofWords;
import org.standwright.packet.words.SecondStage;
import org.standwright.packet.words.SheetCount;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

/** The cut list as a page of plain text for the workshop wall, with what to watch out for and what to buy. */
public final class CutListTextWriter {
    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private CutListTextWriter(Units units) {
        this.units = units;
    }

    /** Writes UTF-8. */
    public static void write(
            Furniture furniture, CutList cutList, SheetPlan plan, List<Finding> findings, OutputStream out)
            throws IOException {
        var page = new CutListTextWriter(furniture.design().unit());
        page.title(furniture);
        page.findings(findings);
        page.boards(plan);
        page.bars(BarsToBuy.of(furniture.design(), cutList));
        page.words();
        page.cuts(cutList, SecondStage.of(furniture));
        page.barPieces(BarsToBuy.of(furniture.design(), cutList), SecondStage.of(furniture));
        page.hardware(cutList);
        out.write((String.join("\n", page.lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private void title(Furniture furniture) {
        var name = furniture.design().name();
        lines.add(name);
        lines.add("=".repeat(name.length()));
        lines.add(furniture.accept(new Purpose(units)));
    }

    private void findings(List<Finding> findings) {
        var worth = findings.stream().filter(Finding::isWorthSaying).toList();
        if (!worth.isEmpty()) {
            heading("Watch out");
            worth.forEach(finding -> lines.addAll(WrappedText.lines(
                    finding.severity() + " ", "    ", finding.subject() + ": " + finding.sentences(units))));
        }
    }

    private void boards(SheetPlan plan) {
        heading("Boards");
        var table = new TextTable(RIGHT, LEFT, LEFT, LEFT);
        plan.materials().forEach(material -> boards(material, table));
        lines.addAll(table.lines());
        plan.materials()
                .forEach(material -> lines.addAll(WrappedText.lines(
                        "",
                        "    ",
                        material.material().name() + ": " + plain(ProofWords.of(material, units)) + used(material))));
        if (!plan.isRepeatable()) {
            lines.addAll(WrappedText.lines("", "    ", ProofWords.NOT_REPEATABLE));
        }
        plan.prices().forEach(sum -> lines.add("Boards with a price together: " + sum));
    }

    private static String used(MaterialPlan material) {
        return material.sheets().isEmpty() ? "" : String.format(Locale.ROOT, ", %.0f %% used", 100 * material.yield());
    }

    private void boards(MaterialPlan material, TextTable table) {
        SheetCount.of(material)
                .forEach(count -> table.add(
                        count.sheets() + " x",
                        BoardWords.name(count.from()),
                        units.bareLength(count.from().length()) + " x "
                                + units.length(count.from().width()),
                        price(count.from())));
    }

    private String price(StockSheet from) {
        return from.isBought() ? from.price().map(each -> each + " each").orElse("") : BoardWords.more(from, units);
    }

    private void bars(List<BarsToBuy> bars) {
        if (!bars.isEmpty()) {
            heading("Bars to buy");
            bars.forEach(bar -> lines.add(bar.run().section().name() + ", section " + section(bar) + ": "
                    + units.run(bar.length()) + " with the cuts" + boughtAs(bar)));
        }
    }

    private String section(BarsToBuy bars) {
        return units.bareLength(bars.width()) + " x "
                + units.length(bars.run().section().thickness());
    }

    private String boughtAs(BarsToBuy bars) {
        return bars.bar()
                .map(bar -> ", " + bars.plan().size() + " x " + units.length(bar.length())
                        + bars.barPlan()
                                .map(plan -> " (" + ProofWords.ofBars(plan.proof()) + ")")
                                .orElse("")
                        + bar.price().map(each -> ", " + each + " each").orElse(""))
                .orElse("");
    }

    private void words() {
        heading("Words");
        CutListWords.paragraphs().forEach(words -> lines.addAll(WrappedText.lines("", "    ", plain(words))));
    }

    private void cuts(CutList cutList, SecondStage later) {
        cutList.linesBySheetMaterial().forEach((material, ofMaterial) -> {
            heading("Cut from " + material.name() + ", " + units.length(material.thickness()) + " thick");
            var table = new TextTable(LEFT, RIGHT, RIGHT, LEFT, RIGHT, LEFT);
            ofMaterial.forEach(line -> table.add(
                    line.label(),
                    line.count() + " x",
                    units.bareLength(line.part().roughLength()),
                    "x",
                    units.length(line.part().roughWidth()),
                    line.part().name()));
            var rows = table.lines();
            for (int row = 0; row < rows.size(); row++) {
                lines.add(rows.get(row));
                sizes(ofMaterial.get(row)).forEach(this::note);
                notes(ofMaterial.get(row), later).forEach(this::note);
            }
        });
    }

    private void barPieces(List<BarsToBuy> bars, SecondStage later) {
        for (var bar : bars) {
            heading("Bar stock: cut from " + bar.run().section().name() + ", section " + section(bar));
            var table = new TextTable(LEFT, RIGHT, RIGHT, LEFT);
            bar.run()
                    .lines()
                    .forEach(line -> table.add(
                            line.label(),
                            line.count() + " x",
                            units.length(line.part().roughLength()),
                            line.part().name()));
            var rows = table.lines();
            for (int row = 0; row < rows.size(); row++) {
                lines.add(rows.get(row));
                notes(bar.run().lines().get(row), later).forEach(this::note);
            }
        }
    }

    private void note(String words) {
        lines.addAll(WrappedText.lines("        ", "            ", words));
    }

    /** From the rough blank to what is built in, where these differ. */
    private List<String> sizes(CutLine line) {
        var sizes = new BlankSizes(line.part(), units);
        if (!sizes.isTrimmed() && !sizes.isBanded()) {
            return List.of();
        }
        return List.of(plain("rough blank " + sizes.rough() + " -> cut size " + sizes.cut() + " -> finished size "
                + sizes.finished()));
    }

    /** When it is cut, which pieces it is, and what is machined into them. */
    private static List<String> notes(CutLine line, SecondStage later) {
        var notes = new ArrayList<String>();
        if (later.holds(line)) {
            notes.add(SecondStage.MARK);
        }
        notes.add("for " + MemberNames.of(line));
        notes.addAll(line.notes());
        return notes;
    }

    /** Signs of plain text only, so that columns line up in every editor. */
    private static String plain(String words) {
        return words.replace("×", "x").replace("…", "...");
    }

    private void hardware(CutList cutList) {
        heading("Hardware");
        var table = new TextTable(RIGHT, LEFT, LEFT);
        cutList.hardware().forEach(line -> table.add(line.count() + " x", line.item(), String.join("; ", line.uses())));
        lines.addAll(table.lines());
    }

    private void heading(String text) {
        lines.add("");
        lines.add(text);
        lines.add("-".repeat(text.length()));
    }
}
