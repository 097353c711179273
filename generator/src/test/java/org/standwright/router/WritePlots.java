package org.standwright.router;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.LongStream;
import org.standwright.Presets;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.design.built.Furniture;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Plot;
import org.standwright.export.PdfWriter;
import org.standwright.export.PlotSvgWriter;
import org.standwright.export.dxf.DxfWriter;
import org.standwright.part.Part;
import org.standwright.router.plan.RouterPlanner;
import org.standwright.router.template.Template;
import org.standwright.sheet.Stock;
import org.standwright.solid.RandomPart;

/**
 * Writes plots as DXF, SVG and PDF into a folder for judges that are not ours, and beside them in {@code expected.tsv} what
 * they should find in each DXF file: see {@link ExpectedPlot}.
 *
 * <p>Of every preset each part's template and boards laid out by hand for three routers; templates and boards of random
 * parts, 50 or as many as a second argument says.
 */
public final class WritePlots {
    private static final long FIRST_SEED = 80_000;

    private final Path folder;
    private final List<String> expected = new ArrayList<>();
    private int files;

    private WritePlots(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
        var plots = new WritePlots(Path.of(args[0]));
        for (var furniture : Presets.furniture()) {
            plots.furniture(furniture);
        }
        long count = args.length > 1 ? Long.parseLong(args[1]) : 50;
        for (long seed : LongStream.range(FIRST_SEED, FIRST_SEED + count).toArray()) {
            plots.random(seed);
        }
        Files.write(plots.folder.resolve("expected.tsv"), plots.expected);
        System.out.println(plots.files + " plots written");
    }

    private void furniture(Furniture furniture) throws IOException {
        var name = fileName(furniture.design().name());
        var cutList = CutList.of(furniture);
        if (furniture.design().router().isPresent()) {
            planned(
                    name,
                    furniture.design(),
                    cutList,
                    furniture.design().router().get());
        }
        Map<String, List<SampleBoards.Named>> flat = new LinkedHashMap<>();
        for (var line : cutList.lines()) {
            template(name + "/" + fileName(line.label() + " " + line.part().name()), line.label(), line.part(), true);
            if (!line.material().isBar()) {
                flat.computeIfAbsent(line.material().name(), key -> new ArrayList<>())
                        .add(new SampleBoards.Named(line.label(), line.part()));
            }
        }
        int way = 0;
        for (var parts : flat.entrySet()) {
            var file = name + "/board-" + fileName(parts.getKey());
            board(file + "-none", parts.getValue(), SampleRouters.router(Router.Relief.NONE), way++);
            board(file + "-tabs", parts.getValue(), SampleRouters.tabbed(), way++);
            board(file + "-skin", parts.getValue(), SampleRouters.skinned(), way++);
        }
    }

    private void random(long seed) throws IOException {
        var part = RandomPart.of(seed);
        template("random/" + seed, "R", part, false);
        var router = SampleRouters.router(Router.Relief.values()[(int) (seed % 3)]);
        try {
            board("random/board-" + seed, List.of(new SampleBoards.Named("R", part)), router, (int) (seed % 8));
        } catch (IllegalArgumentException e) {
            System.out.println(seed + ": " + e.getMessage());
        }
    }

    private void template(String name, String label, Part part, boolean formula) throws IOException {
        var plot = Template.of(label, 1, part);
        write(name, plot);
        try (var out = Files.newOutputStream(folder.resolve(name + ".pdf"))) {
            PdfWriter.write(List.of(Template.page(plot)), out);
        }
        ExpectedPlot.template(part).forEach(line -> expected.add(name + ".dxf\t" + line));
    }

    /** The boards that such a design really gets. */
    private void planned(String name, Design design, CutList cutList, Router router) throws IOException {
        int number = 0;
        for (var material :
                RouterPlanner.plan(Stock.of(design), cutList, router).materials()) {
            for (var sheet : material.sheets()) {
                board(name + "/planned-" + ++number, sheet, router);
            }
        }
    }

    private void board(String name, List<SampleBoards.Named> parts, Router router, int way) throws IOException {
        board(name, SampleBoards.of(parts, router, way), router);
    }

    private void board(String name, RoutedSheet sheet, Router router) throws IOException {
        var plots = SampleBoards.plots(name, sheet, router);
        write(name + "-top", plots.top());
        if (plots.bottom().isPresent()) {
            write(name + "-bottom", plots.bottom().get());
        }
        Files.write(folder.resolve(name + ".txt"), plots.legend());
        ExpectedPlot.top(sheet, router).forEach(line -> expected.add(name + "-top.dxf\t" + line));
        ExpectedPlot.bottom(sheet, router).forEach(line -> expected.add(name + "-bottom.dxf\t" + line));
    }

    private void write(String name, Plot plot) throws IOException {
        var file = folder.resolve(name + ".dxf");
        Files.createDirectories(file.getParent());
        try (var out = Files.newOutputStream(file)) {
            DxfWriter.write(plot, out);
        }
        try (var out = Files.newOutputStream(folder.resolve(name + ".svg"))) {
            PlotSvgWriter.write(plot, out);
        }
        files++;
    }

    private static String fileName(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
