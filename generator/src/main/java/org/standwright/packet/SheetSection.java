package org.standwright.packet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.geom.Grid;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/** Where each piece lies on which sheet, and the cuts in order. */
final class SheetSection implements Section {
    /** A page takes two boards of the usual shape with what is written about them. */
    private static final double ROOM = 0.4;

    @Override
    public void print(Contents contents, Flow flow) {
        if (contents.plan().materials().isEmpty()) {
            return;
        }
        flow.freshPage();
        flow.heading("Sheet plans");
        var saw = contents.plan().saw();
        flow.paragraph("Kerf " + contents.exact(saw.kerf()) + trim(saw.trim(), contents)
                + ". The grain runs along the sheet's length, left to right; arrows mark it on the pieces. "
                + "Numbered lines are saw cuts in order; hatched areas are offcuts.");
        for (var material : contents.plan().materials()) {
            flow.heading(material.sheet().material().name() + ", " + size(material, contents.units()));
            flow.lead(used(material));
            for (int i = 0; i < material.sheets().size(); i++) {
                sheet(material, i, contents, flow);
            }
        }
    }

    private static String trim(double trim, Contents contents) {
        return Grid.same(trim, 0)
                ? ", edges used as bought"
                : ", trim " + contents.exact(trim) + " off every edge first";
    }

    private static String size(MaterialPlan material, Units units) {
        return units.bareLength(material.sheet().length()) + " × "
                + units.length(material.sheet().width());
    }

    private static String used(MaterialPlan material) {
        int sheets = material.sheets().size();
        int bound = material.lowerBound();
        var proof = sheets == bound
                ? "No plan can do with fewer."
                : "No plan can do with fewer than " + bound + "; whether " + bound + " would do is open.";
        return String.format(
                Locale.ROOT,
                "%d %s, yield %.1f %%. %s",
                sheets,
                sheets == 1 ? "sheet" : "sheets",
                100 * material.yield(),
                proof);
    }

    private static void sheet(MaterialPlan material, int index, Contents contents, Flow flow) {
        var planned = material.sheets().get(index);
        flow.heading("Sheet " + (index + 1) + " of " + material.sheets().size());
        if (!planned.cuts().isEmpty()) {
            flow.lead("Cuts, from the lower left corner of the sheet to the near side of the kerf: "
                    + cuts(planned, contents.units()) + ".");
        }
        flow.figure(SheetFigure.of(
                material.sheet(),
                contents.plan().saw(),
                planned,
                contents.units(),
                flow.width(),
                ROOM * flow.height(),
                flow.measure()));
    }

    private static String cuts(PlannedSheet planned, Units units) {
        return planned.cuts().stream().map(cut -> cut(cut, units)).collect(Collectors.joining(", "));
    }

    private static String cut(Cut cut, Units units) {
        boolean rip = cut.direction() == Cut.Direction.RIP;
        double at = SheetUnit.mm(rip ? cut.kerf().y() : cut.kerf().x());
        return List.of(String.valueOf(cut.number()), rip ? "rip" : "crosscut", units.bareLength(at)).stream()
                .collect(Collectors.joining("\u00a0"));
    }
}
