package org.standwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.drawing.figure.SheetKey;
import org.standwright.export.SvgWriter;
import org.standwright.packet.words.BoardWords;
import org.standwright.packet.words.SecondStage;
import org.standwright.packet.words.TrimWords;
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
        return product.furniture().accept(new Pages(product));
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
                        out -> SvgWriter.write(drawing(product, sheet, title), out)));
            }
        }
        return files;
    }

    /** What it is and for which saw: 'Planer stand: birch 18, sheet 1 of 2, kerf 3.2 mm, trim 5 mm'. */
    private static String title(Product product, MaterialPlan material, int index) {
        var saw = product.plan().saw();
        return product.furniture().design().name() + ": " + BoardWords.of(material, index, product.units()) + ", kerf "
                + product.units().length(saw.kerf()) + ", " + TrimWords.of(saw.trim(), product.units());
    }

    private static Drawing drawing(Product product, PlannedSheet sheet, String title) {
        var measure = TextMeasure.shipped();
        var style = new SheetFigure(product.plan().saw(), later(product), product.units(), measure);
        var figure = style.of(sheet, WIDTH, HEIGHT)
                .titled(title, WIDTH / 2, measure)
                .over(SheetKey.of(List.of(sheet), measure), measure);
        return new Drawing(
                title, figure.width() + 2 * MARGIN, figure.height() + 2 * MARGIN, List.of(figure.at(MARGIN, MARGIN)));
    }

    private static Set<String> later(Product product) {
        return SecondStage.of(product.furniture()).labels(product.cutList());
    }
}
