package org.standwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.assembly.Block;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.export.SvgWriter;
import org.standwright.packet.MassLine;
import org.standwright.packet.Packet;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;

/** What a product looks like on paper. */
final class Papers {
    /** Room for one sheet's figure, mm, and the white around it. */
    private static final double WIDTH = 277;

    private static final double HEIGHT = 190;
    private static final double MARGIN = 10;

    private Papers() {}

    static List<Drawing> packet(Product product) {
        return Packet.pages(product.stand(), product.cutList(), product.plan(), product.findings(), masses(product));
    }

    /** One file a sheet, numbered through all materials. */
    static List<OutputFile> sheets(Product product) {
        var files = new ArrayList<OutputFile>();
        for (var material : product.plan().materials()) {
            for (var sheet : material.sheets()) {
                var number = String.format(Locale.ROOT, "%02d", files.size() + 1);
                var name = material.sheet().material().name();
                files.add(new OutputFile(
                        "sheets/" + FileNames.of(number, name, ".svg"),
                        out -> SvgWriter.write(drawing(product, material, sheet, number + " " + name), out)));
            }
        }
        return files;
    }

    private static Drawing drawing(Product product, MaterialPlan material, PlannedSheet sheet, String title) {
        var figure = SheetFigure.of(
                material.sheet(), product.plan().saw(), sheet, product.units(), WIDTH, HEIGHT, TextMeasure.shipped());
        return new Drawing(
                title, figure.width() + 2 * MARGIN, figure.height() + 2 * MARGIN, List.of(figure.at(MARGIN, MARGIN)));
    }

    private static List<MassLine> masses(Product product) {
        var lines = new ArrayList<MassLine>();
        for (var group : product.stand().assembly().groups()) {
            double wood = product.solids().solids().stream()
                    .filter(solid -> solid.group().equals(group.name()))
                    .mapToDouble(solid -> solid.mass())
                    .sum();
            if (wood > 0) {
                lines.add(new MassLine(group.name(), wood));
            }
            if (group.blocks().stream().anyMatch(block -> block.kind() == Block.Kind.MACHINE)) {
                var machine = product.stand().design().machine();
                lines.add(new MassLine(machine.name(), machine.mass()));
            }
        }
        return lines;
    }
}
