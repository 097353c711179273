package org.standwright.make;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.export.PdfWriter;
import org.standwright.export.PlotSvgWriter;
import org.standwright.export.dxf.DxfWriter;
import org.standwright.router.template.Template;

/** Each line of the cut list at true size. */
final class PlotFiles {
    private PlotFiles() {}

    static List<OutputFile> dxf(Product product) {
        return product.cutList().lines().stream()
                .map(line ->
                        new OutputFile(PartFiles.name(line, ".dxf"), out -> DxfWriter.write(Template.of(line), out)))
                .toList();
    }

    /** To print, and as SVG for cutters. */
    static List<OutputFile> templates(Product product) {
        return product.cutList().lines().stream()
                .flatMap(line -> Stream.of(
                        new OutputFile(
                                PartFiles.name(line, ".svg"), out -> PlotSvgWriter.write(Template.of(line), out)),
                        new OutputFile(
                                PartFiles.name(line, ".pdf"),
                                out -> PdfWriter.write(List.of(Template.page(Template.of(line))), out))))
                .toList();
    }
}
