package org.standwright.make;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.standwright.design.kit.StockSheet;
import org.standwright.drawing.plot.Plot;
import org.standwright.export.PlotSvgWriter;
import org.standwright.export.dxf.DxfWriter;
import org.standwright.part.Material;
import org.standwright.router.RouterPlan;
import org.standwright.router.board.RouterPlots;
import org.standwright.unit.Units;

/** What a router's program and its operator get: each board as DXF and SVG, and one legend for all. */
final class RouterFiles {
    private RouterFiles() {}

    /**
     * The files of a plan, boards numbered through all materials. Where a board has two sides the names say which is cut
     * first.
     *
     * @param design what the boards are for
     * @param units that the design is read in
     */
    static List<OutputFile> of(RouterPlan plan, String design, Units units) {
        var files = new ArrayList<OutputFile>();
        var legend = new ArrayList<String>();
        int number = 0;
        for (var material : plan.materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                number++;
                var name = name(material.material(), material.sheets().get(i).from());
                var title = design + ": " + String.format(Locale.ROOT, "%02d", number) + " " + name + ", sheet "
                        + (i + 1) + " of " + material.sheets().size();
                var plots = RouterPlots.of(
                        title,
                        material.sheets().get(i),
                        plan.router(),
                        units,
                        piece -> PartFiles.name(piece.label(), piece.part().name(), ".dxf"));
                files.addAll(files(plots, String.format(Locale.ROOT, "%02d", number), name));
                legend.addAll(plots.legend());
                legend.add("");
            }
        }
        var text = legend.stream().map(line -> line + "\n").collect(Collectors.joining());
        files.add(new OutputFile("router/legend.txt", out -> out.write(text.getBytes(StandardCharsets.UTF_8))));
        return files;
    }

    /** The board's own name where it has one that says more than the material's: two may differ in thickness. */
    private static String name(Material material, StockSheet board) {
        return board.name().startsWith(material.name()) ? board.name() : board.name() + ", " + material.name();
    }

    private static List<OutputFile> files(RouterPlots plots, String number, String material) {
        var files = new ArrayList<OutputFile>();
        plots.bottom().ifPresent(bottom -> add(files, bottom, number, "first bottom " + material));
        add(files, plots.top(), number, (plots.bottom().isPresent() ? "then top " : "top ") + material);
        return files;
    }

    private static void add(List<OutputFile> files, Plot plot, String number, String words) {
        files.add(new OutputFile("router/" + FileNames.of(number, words, ".dxf"), out -> DxfWriter.write(plot, out)));
        files.add(
                new OutputFile("router/" + FileNames.of(number, words, ".svg"), out -> PlotSvgWriter.write(plot, out)));
    }
}
