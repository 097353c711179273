package org.standwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.drawing.Drawing;
import org.standwright.export.SvgWriter;
import org.standwright.sheet.MaterialPlan;

/** What a product looks like on paper. */
final class Papers {
    private Papers() {}

    static List<Drawing> packet(Product product) {
        return product.furniture().accept(new Pages(product));
    }

    /** One file a sheet, numbered through all materials. */
    static List<OutputFile> sheets(Product product) {
        var files = new ArrayList<OutputFile>();
        for (var material : product.plan().materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                var number = String.format(Locale.ROOT, "%02d", files.size() + 1);
                int index = i;
                files.add(new OutputFile(
                        "sheets/" + FileNames.of(number, material.material().name(), ".svg"),
                        out -> SvgWriter.write(sheet(product, material, index).drawing(), out)));
            }
        }
        return files;
    }

    private static SheetPaper sheet(Product product, MaterialPlan material, int index) {
        return SheetPaper.of(product.furniture(), product.cutList(), product.plan(), material, index);
    }
}
