package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.PageFrame;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.SecondStage;
import org.standwright.packet.words.SheetCount;
import org.standwright.packet.words.TrimWords;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;
import org.standwright.unit.Units;

/** Where each piece lies on which sheet, and the cuts in order; a board lies sideways where that shows it larger. */
final class SheetSection implements Section {
    /** Share of an upright page that a board takes there, so that its cuts have room below it. */
    private static final double UPRIGHT = 0.5;
    /** Heading and lines above a board that fills a page, mm. */
    private static final double ABOVE = 22;
    /** Most rows of a table of cuts, two cuts a row, so that a page sideways holds it. */
    private static final int ROWS = 26;

    private static final List<String> EMPTY = List.of("", "", "", "", "", "");

    @Override
    public void print(Contents contents, Flow flow) {
        if (contents.plan().materials().isEmpty()) {
            return;
        }
        var waiting = SecondStage.of(contents.stand()).labels(contents.cutList());
        flow.heading("Sheet plans");
        var saw = contents.plan().saw();
        flow.paragraph("Kerf " + contents.exact(saw.kerf()) + ", " + TrimWords.of(saw.trim(), contents.units())
                + ". The grain runs along the sheet's length, left to right; arrows mark it on the pieces. "
                + "Numbered lines are saw cuts in order; hatched areas are offcuts. Pieces lie show face up; the wedge "
                + "in a corner marks the reference edge with its long side and the reference end with its short one.");
        if (!waiting.isEmpty()) {
            flow.paragraph(
                    "Stage 2: each sheet names the pieces that wait until the openings are measured. Cuts marked "
                            + "'2' part nothing else: leave those panels whole until then.");
        }
        flow.table(materials(contents));
        for (var material : contents.plan().materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                sheet(material, i, waiting, contents, flow);
            }
        }
    }

    private static Table materials(Contents contents) {
        var rows = contents.plan().materials().stream()
                .map(material -> List.of(
                        material.material().name(),
                        size(material, contents.units()),
                        String.valueOf(material.sheets().size()),
                        String.format(Locale.ROOT, "%.1f %%", 100 * material.yield()),
                        proof(material)))
                .toList();
        return new Table(
                List.of(
                        Column.words("Material"),
                        Column.figures("Sheet"),
                        Column.figures("Count"),
                        Column.figures("Yield"),
                        Column.prose("Fewer sheets?")),
                rows);
    }

    private static String size(MaterialPlan material, Units units) {
        return SheetCount.of(material).stream()
                .map(count -> units.bareLength(count.from().length()) + " × "
                        + units.bareLength(count.from().width()))
                .collect(Collectors.joining(", "));
    }

    private static String proof(MaterialPlan material) {
        long bound = material.proof().least();
        return material.proof().isMinimal()
                ? "No plan can do with fewer."
                : "No plan can do with fewer than " + bound + "; whether " + bound + " would do is open.";
    }

    private static void sheet(MaterialPlan material, int index, Set<String> waiting, Contents contents, Flow flow) {
        var planned = material.sheets().get(index);
        var upright = figure(
                planned, contents, flow.upright(), UPRIGHT * flow.upright().height());
        var sideways =
                figure(planned, contents, flow.sideways(), flow.sideways().height() - ABOVE);
        boolean larger = sideways.width() > upright.width() + 1;
        flow.freshPage(larger ? flow.sideways() : flow.upright());
        var name = material.material().name() + ", sheet " + (index + 1) + " of "
                + material.sheets().size();
        flow.heading(name);
        var later = SheetCuts.waiting(planned, waiting);
        if (!later.isEmpty()) {
            flow.lead("Stage 2, cut after the opening is measured: " + String.join(", ", later) + ".");
        }
        flow.figure(larger ? sideways : upright);
        if (!planned.cuts().isEmpty()) {
            flow.lead("Cuts of " + name
                    + " in order, to the near side of the kerf. Corner: from the lower left corner of the sheet. "
                    + "Fence: from the near edge of the panel that is cut.");
            var cuts = SheetCuts.of(planned.trimmed(contents.plan().saw()), planned, waiting);
            for (int from = 0; from < cuts.size(); from += 2 * ROWS) {
                flow.wholeTable(cuts(cuts.subList(from, Math.min(from + 2 * ROWS, cuts.size())), contents.units()));
            }
        }
    }

    private static Figure figure(PlannedSheet planned, Contents contents, PageFrame frame, double height) {
        return SheetFigure.of(
                contents.plan().saw(), planned, contents.units(), frame.width(), height, TextMeasure.shipped());
    }

    /** Two runs of rows side by side, read down the left one first. */
    private static Table cuts(List<SheetCuts.Row> cuts, Units units) {
        var columns = new ArrayList<Column>();
        for (int run = 0; run < 2; run++) {
            columns.addAll(List.of(
                    Column.figures("Cut"),
                    Column.words("Kind"),
                    Column.figures("Corner"),
                    Column.figures("Fence"),
                    Column.words("Frees"),
                    Column.words("Stage")));
        }
        var rows = new ArrayList<List<String>>();
        int half = (cuts.size() + 1) / 2;
        for (int i = 0; i < half; i++) {
            var row = new ArrayList<>(cells(cuts.get(i), units));
            row.addAll(half + i < cuts.size() ? cells(cuts.get(half + i), units) : EMPTY);
            rows.add(row);
        }
        return new Table(columns, rows);
    }

    private static List<String> cells(SheetCuts.Row row, Units units) {
        return List.of(
                String.valueOf(row.cut().number()),
                row.cut().direction() == Cut.Direction.RIP ? "rip" : "crosscut",
                units.bareLength(row.fromCorner()),
                units.bareLength(row.fromEdge()),
                String.join(", ", row.frees()),
                row.waits() ? "2" : "1");
    }
}
