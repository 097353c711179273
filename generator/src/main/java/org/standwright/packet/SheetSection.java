package org.standwright.packet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.built.Furniture;
import org.standwright.drawing.figure.SheetKey;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.BoardWords;
import org.standwright.packet.words.ProofWords;
import org.standwright.packet.words.SecondStage;
import org.standwright.packet.words.SheetCount;
import org.standwright.packet.words.TrimWords;
import org.standwright.packet.words.YieldShares;
import org.standwright.sheet.Area;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Money;
import org.standwright.unit.Units;

/** Which boards it takes, what becomes of them, and where each piece lies. */
final class SheetSection implements Section<Furniture> {
    @Override
    public void print(Contents<? extends Furniture> contents, Flow flow) {
        var plan = contents.plan();
        if (plan.materials().isEmpty()) {
            return;
        }
        flow.freshPage();
        flow.heading("Sheet plans");
        flow.table(boards(contents));
        plan.prices().forEach(sum -> flow.paragraph("Boards with a price together: " + sum + "."));
        boolean proved =
                plan.materials().stream().allMatch(material -> material.proof().isMinimal());
        flow.lead("What becomes of the boards."
                + (proved
                        ? ""
                        : " No plan can do with less than the bound; a better plan could save the gap at most."));
        flow.table(yields(contents));
        if (!plan.isRepeatable()) {
            flow.paragraph(ProofWords.NOT_REPEATABLE);
        }
        plan.materials().forEach(material -> offcuts(material, contents.units(), flow));
        plan.materials().forEach(material -> thicknesses(material, contents, flow));
        flow.paragraph("Kerf " + contents.exact(plan.saw().kerf()) + ", "
                + TrimWords.of(plan.saw().trim(), contents.units())
                + ". The grain runs along the sheet's length, left to right; arrows mark it on the pieces. Pieces lie "
                + "show face up; the wedge in a corner marks the reference edge with its long side and the reference "
                + "end with its short one. Sizes in pieces: length along the part's grain × width. "
                + later(contents) + bevels(contents) + "Bare areas are waste.");
        var sheets = plan.materials().stream()
                .flatMap(material -> material.sheets().stream())
                .toList();
        flow.figure(SheetKey.of(sheets, flow.measure()));
        new SheetPages(contents, flow).print();
    }

    private static String later(Contents<?> contents) {
        return SecondStage.of(contents.furniture()).labels(contents.cutList()).isEmpty()
                ? ""
                : "Pieces marked 'stage 2' wait until the openings are measured: their cuts are at the end of the "
                        + "cutting order. ";
    }

    private static String bevels(Contents<?> contents) {
        boolean any = contents.plan().materials().stream()
                .flatMap(material -> material.sheets().stream())
                .flatMap(sheet -> sheet.pieces().stream())
                .anyMatch(piece -> piece.parting() == PlacedPiece.Parting.BEVEL);
        return any
                ? "Of a blank of 'one bevel rip' the second strip comes out turned over: see the cutting order. "
                : "";
    }

    private static Table boards(Contents<?> contents) {
        var rows = contents.plan().materials().stream()
                .flatMap(material -> SheetCount.of(material).stream())
                .map(count -> row(count, contents.units()))
                .toList();
        return new Table(
                List.of(
                        Column.figures("Count"),
                        Column.prose("Board"),
                        Column.words("From"),
                        Column.figures("Size"),
                        Column.figures("Thickness"),
                        Column.figures("Each"),
                        Column.figures("Together")),
                rows);
    }

    private static List<String> row(SheetCount count, Units units) {
        var from = count.from();
        var price = from.price().filter(any -> from.isBought());
        return List.of(
                String.valueOf(count.sheets()),
                BoardWords.name(from),
                from.isBought() ? "to buy" : "at hand",
                units.bareLength(from.length()) + " × " + units.bareLength(from.width()),
                units.bareLength(from.thickness()),
                price.map(Money::toString).orElse(""),
                price.map(each -> each.times((int) count.sheets()).toString()).orElse(""));
    }

    private static Table yields(Contents<?> contents) {
        var columns = new ArrayList<>(List.of(Column.words("Material"), Column.prose("Needed")));
        YieldShares.NAMES.forEach(name -> columns.add(Column.figures(name)));
        columns.add(Column.figures("Sum"));
        var rows = contents.plan().materials().stream()
                .map(material -> yields(material, contents))
                .toList();
        return new Table(columns, rows);
    }

    private static List<String> yields(MaterialPlan material, Contents<?> contents) {
        var names = Stream.of(material.material().name(), ProofWords.of(material, contents.units()));
        return Stream.of(names, YieldShares.of(material.areas()).stream(), Stream.of("100.0 %"))
                .flatMap(cells -> cells)
                .toList();
    }

    private static void offcuts(MaterialPlan material, Units units, Flow flow) {
        var found = IntStream.range(0, material.sheets().size())
                .boxed()
                .flatMap(i -> material.sheets().get(i).offcuts().stream()
                        .map(offcut -> size(offcut, units) + " (sheet " + (i + 1) + ")"))
                .toList();
        if (!found.isEmpty()) {
            flow.paragraph("Offcuts to keep of " + material.material().name() + ": " + String.join(", ", found) + ".");
        }
    }

    private static String size(Area offcut, Units units) {
        return units.bareLength(SheetUnit.mm(offcut.length())) + " × " + units.bareLength(SheetUnit.mm(offcut.width()));
    }

    /** Which pieces come from a board of a thickness of its own. */
    private static void thicknesses(MaterialPlan material, Contents<?> contents, Flow flow) {
        for (int i = 0; i < material.sheets().size(); i++) {
            var sheet = material.sheets().get(i);
            if (BoardWords.hasOwnThickness(sheet.from())) {
                var mating = mating(sheet, contents);
                flow.paragraph(material.material().name() + ", sheet " + (i + 1) + " is "
                        + contents.units().length(sheet.from().thickness()) + " thick as measured. "
                        + (mating.isEmpty()
                                ? "No piece of it sits in a dado."
                                : "Pieces of it that sit in dados: " + String.join(", ", mating)
                                        + ". Cut a test dado in scrap from that sheet before theirs."));
            }
        }
    }

    private static LinkedHashSet<String> mating(PlannedSheet sheet, Contents<?> contents) {
        var mating = new LinkedHashSet<String>();
        sheet.pieces().stream()
                .flatMap(piece -> piece.parts().stream())
                .map(PlacedPiece::label)
                .filter(contents.cutList().cutting().mating()::contains)
                .forEach(mating::add);
        return mating;
    }
}
