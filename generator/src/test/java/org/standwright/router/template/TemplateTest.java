package org.standwright.router.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.Plot;
import org.standwright.export.PdfWriter;
import org.standwright.export.PlotSvgWriter;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.w3c.dom.Document;

class TemplateTest {
    private static final Material PLY = new Material("ply 18", 18, 700, Grain.NONE);
    private static final Part PART = Part.blank("side", PLY, 600, 300)
            .with(
                    Hole.through(100, 100, 8, "bolt"),
                    Hole.blind(Face.BENCH, 200, 100, 5, 12, "pin"),
                    Channel.across(Face.BENCH, 400, 418, 300, 6),
                    Pocket.through(new Rect(500, 250, 600, 300), 10, "notch"),
                    new EdgeHole(Edge.X0, 150, 9, 3, 40, "screw pilot"));

    @Test
    void showsBothFacesEachOnLayersOfItsOwn() {
        var plot = Template.of("A", 2, PART);

        assertThat(plot.layers())
                .extracting(Layer::name)
                .containsExactly(
                        "outline",
                        "bore 8 through",
                        "centres",
                        "bench face bore 5 12 deep",
                        "bench face channel 6 deep",
                        "cutout",
                        "edge bore 3 40 deep z 9",
                        "note");
        assertThat(words(plot))
                .contains(
                        "A side, 2 x ply 18, 600 x 300 x 18 mm finished",
                        "check: 100 mm",
                        "z 9",
                        "\u00d8 8 through",
                        "bench \u00d8 5, 12 deep",
                        "bench 6 deep")
                .anyMatch(words -> words.startsWith("show face up"));
    }

    @Test
    void keepsTheFinishedSizeThatATrimOrAnEdgingLeaves() {
        var outline = (Mark.Closed)
                Template.of("A", 1, PART.cutOver(5)).layers().get(0).marks().get(0);
        assertThat(outline.loop().bounds()).isEqualTo(new Rect(0, 0, 600, 300));
    }

    @Test
    void isAnSvgOfTheSameSizeWithOneGroupALayer() throws Exception {
        var plot = Template.of("A", 2, PART);
        var root = svg(plot).getDocumentElement();

        assertThat(root.getAttribute("width")).endsWith("mm");
        assertThat(Double.parseDouble(root.getAttribute("width").replace("mm", "")))
                .isCloseTo(plot.width(), within(0.001));
        assertThat(root.getAttribute("viewBox")).startsWith("0 0 600 ");
        var groups = root.getElementsByTagName("g");
        assertThat(groups.getLength()).isEqualTo(plot.layers().size());
        for (int i = 0; i < groups.getLength(); i++) {
            assertThat(groups.item(i).getAttributes().getNamedItem("data-layer").getNodeValue())
                    .isEqualTo(plot.layers().get(i).name());
        }
        var notch = groups.item(5).getFirstChild().getNextSibling();
        assertThat(notch.getAttributes().getNamedItem("d").getNodeValue())
                .as("one closed path whose rounding is an arc")
                .matches("M.*A10 10 0 0 0 [0-9. ]+.*Z");
    }

    /** References 8, vector 55 (SVG/CSS): 1 mm is 3.7795275591 px of 96 to the inch, 4 ft are 4608 px. */
    @Test
    void needsNoFactorInAnSvg() {
        assertThat(96 / 25.4).isCloseTo(3.7795275591, within(1e-9));
        assertThat(4 * 12 * 96).isEqualTo(4608);
    }

    @Test
    void printsAtTrueSize() throws IOException {
        var out = new ByteArrayOutputStream();
        var plot = Template.of("A", 2, PART);
        PdfWriter.write(List.of(Template.page(plot)), out);
        try (var pdf = Loader.loadPDF(out.toByteArray())) {
            var box = pdf.getPage(0).getMediaBox();
            // references 8, vector 54 (PDF reference): 1 mm = 2.8346456693 units, 60 mm = 170.0787
            assertThat((double) box.getWidth()).isCloseTo(620 * 2.8346456693, within(1e-2));
            assertThat((double) box.getHeight()).isCloseTo((plot.height() + 20) * 170.0787 / 60, within(1e-2));
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("check: 100 mm")
                    .contains("z 9");
        }
    }

    @Test
    void saysWhatToUseWhereNoPageIsSoLong() {
        var page = Template.page(Template.of("A", 1, Part.blank("beam", PLY, 5100, 100)));
        assertThat(page.width()).isEqualTo(210);
        assertThat(Template.page(Template.of("A", 1, Part.blank("beam", PLY, 5000, 100)))
                        .width())
                .isEqualTo(5020);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<&>\"'", "two\nlines", "\ud83d\ude00", "\u0000", "]]>", "\ud800"})
    void takesAnyName(String name) throws Exception {
        var part = Part.blank(name, PLY, 300, 200).with(Hole.through(50, 50, 8, name));
        var plot = Template.of("A", 1, part);

        assertThat(svg(plot).getElementsByTagName("g").getLength())
                .isEqualTo(plot.layers().size());
        var out = new ByteArrayOutputStream();
        PdfWriter.write(List.of(Template.page(plot)), out);
        assertThat(out.size()).isPositive();
    }

    private static List<String> words(Plot plot) {
        return plot.layers().stream()
                .flatMap(layer -> layer.marks().stream())
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).words())
                .toList();
    }

    private static Document svg(Plot plot) throws Exception {
        var out = new ByteArrayOutputStream();
        PlotSvgWriter.write(plot, out);
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(out.toByteArray()));
    }
}
