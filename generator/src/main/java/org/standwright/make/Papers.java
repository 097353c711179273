package org.standwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.assembly.Block;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.export.SvgWriter;
import org.standwright.packet.MassLine;
import org.standwright.packet.Packet;
import org.standwright.packet.words.TrimWords;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;

/** What a product looks like on paper. */
final class Papers {
    /** Room for one sheet's figure, mm, and the white around it. */
    private static final double WIDTH = 277;

    private static final double HEIGHT = 190;
    private static final double MARGIN = 10;
    /** Between a sheet and its title. */
    private static final double HEAD = 3;

    private Papers() {}

    static List<Drawing> packet(Product product) {
        return Packet.pages(product.stand(), product.cutList(), product.plan(), product.findings(), masses(product));
    }

    /** One file a sheet, numbered through all materials. */
    static List<OutputFile> sheets(Product product) {
        var files = new ArrayList<OutputFile>();
        for (var material : product.plan().materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                var sheet = material.sheets().get(i);
                var number = String.format(Locale.ROOT, "%02d", files.size() + 1);
                var title = title(product, material, i);
                files.add(new OutputFile(
                        "sheets/" + FileNames.of(number, material.material().name(), ".svg"),
                        out -> SvgWriter.write(drawing(product, material, sheet, title), out)));
            }
        }
        return files;
    }

    /** What it is and for which saw: 'Planer stand: birch 18, sheet 1 of 2, kerf 3.2 mm, trim 5 mm'. */
    private static String title(Product product, MaterialPlan material, int index) {
        var saw = product.plan().saw();
        return String.format(
                Locale.ROOT,
                "%s: %s, sheet %d of %d, kerf %s, %s",
                product.stand().design().name(),
                material.material().name(),
                index + 1,
                material.sheets().size(),
                product.units().length(saw.kerf()),
                TrimWords.of(saw.trim(), product.units()));
    }

    private static Drawing drawing(Product product, MaterialPlan material, PlannedSheet sheet, String title) {
        var measure = TextMeasure.shipped();
        var figure = SheetFigure.of(product.plan().saw(), sheet, product.units(), WIDTH, HEIGHT, measure);
        var shapes = new ArrayList<Shape>(List.of(figure.at(MARGIN, MARGIN)));
        var head = measure.wrap(title, figure.width(), Letters.BODY, Weight.BOLD);
        double y = MARGIN + figure.height() + HEAD + head.size() * measure.pitch(Letters.BODY);
        double height = y + MARGIN;
        for (var line : head) {
            y -= measure.pitch(Letters.BODY);
            shapes.add(Text.level(line, new Point(MARGIN, y), Letters.BODY, Text.Anchor.START)
                    .bold());
        }
        return new Drawing(title, figure.width() + 2 * MARGIN, height, shapes);
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
