package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.StandDesign;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.export.PdfWriter;

class PacketTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    static Stream<StandDesign> designs() {
        return Stream.of(Jobs.metric(), Jobs.inches(), Jobs.plinth());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void noTextLiesOnAnother(StandDesign design) {
        for (var page : Jobs.packet(design)) {
            var texts = Lettering.of(page.shapes(), MEASURE).texts();
            for (int i = 0; i < texts.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(Lettering.overlap(
                                    texts.get(i).box(), texts.get(j).box()))
                            .as("'%s' on '%s', %s", texts.get(i), texts.get(j), page.title())
                            .isFalse();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyTextLiesWithinTheMargins(StandDesign design) {
        for (var page : Jobs.packet(design)) {
            for (var text : Lettering.of(page.shapes(), MEASURE).texts()) {
                var box = text.box();
                assertThat(box.x0() >= PageFrame.SIDE - 1e-9
                                && box.x1() <= page.width() - PageFrame.SIDE + 1e-9
                                && box.y0() >= PageFrame.EDGE - 1e-9
                                && box.y1() <= page.height() - PageFrame.EDGE + 1e-9)
                        .as("%s, %s", text, page.title())
                        .isTrue();
            }
        }
    }

    @Test
    void metricPacketIsA4AndSaysEverySection() throws IOException {
        var text = text(Jobs.packet(Jobs.metric()));
        assertThat(text)
                .contains("Height stack", "Views", "Drawers", "Measure, then cut", "Cut list", "Hardware")
                .contains("Sheet plans", "Assembly order", "Findings", "Cautions", "page 1 of ")
                .contains("Sum = working height 900 fixed")
                .contains("box width = smaller − 26 mm");
    }

    @Test
    void writesSvg() throws IOException {
        var design = Jobs.metric();
        var plan = Jobs.plan(
                design,
                org.standwright.cutlist.CutList.of(
                        org.standwright.design.stand.StandBuilder.build(design).assembly(), design.unit()));
        int i = 0;
        for (var d : org.standwright.drawing.SheetDrawings.of(plan, design.unit(), MEASURE)) {
            var out = new ByteArrayOutputStream();
            org.standwright.export.SvgWriter.write(d, out);
            Files.write(Path.of("target", "s" + i++ + ".svg"), out.toByteArray());
        }
    }

    @Test
    void writesEverySize() throws IOException {
        for (var design : designs().toList()) {
            var out = new ByteArrayOutputStream();
            PdfWriter.write(Jobs.packet(design), out);
            Files.write(
                    Path.of(
                            "target",
                            design.name().replace(' ', '-')
                                    + design.support().getClass().getSimpleName() + ".pdf"),
                    out.toByteArray());
        }
    }

    private static String text(List<Drawing> pages) throws IOException {
        var out = new ByteArrayOutputStream();
        PdfWriter.write(pages, out);
        try (var document = Loader.loadPDF(out.toByteArray())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
