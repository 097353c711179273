package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Paper;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;
import org.w3c.dom.Element;

class PaperWritersTest {
    private static final String SIGNS = "× ° ± ≥ ≤ Ø ½ ² ³ – — ″ fi & <";

    /** Shapes of every kind on a page of A4. */
    private static Drawing everyKind() {
        return new Drawing(
                "every kind & <more>",
                Paper.A4.width(),
                Paper.A4.height(),
                List.of(
                        Line.between(20, 20, 80, 20, Pen.OUTLINE),
                        new Arc(new Point(100, 100), 20, 30, -270, Pen.HIDDEN),
                        Polygon.of(new Rect(10, 200, 40, 220), Pen.CUT, Fill.LIGHT),
                        new Group(
                                new Point(5, 5), List.of(Text.level(SIGNS, new Point(30, 150), 4, Text.Anchor.START))),
                        Text.level("upward", new Point(150, 150), 4, Text.Anchor.MIDDLE)
                                .upward()
                                .bold(),
                        Text.level("no sign: \u6728 \ud83d\ude00", new Point(100, 250), 4, Text.Anchor.END)));
    }

    private static byte[] pdf(Drawing... pages) throws IOException {
        var out = new ByteArrayOutputStream();
        PdfWriter.write(List.of(pages), out);
        return out.toByteArray();
    }

    private static String svg(Drawing drawing) throws IOException {
        var out = new ByteArrayOutputStream();
        SvgWriter.write(drawing, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    /** PDF reference: the default unit is 1/72 in; A4 595.2756 × 841.8898, Letter 612 × 792. */
    @Test
    void pdfPagesAreAsLargeAsTheirPaper() throws IOException {
        var letter = new Drawing("letter", Paper.LETTER.width(), Paper.LETTER.height(), List.of());
        try (var document = Loader.loadPDF(pdf(everyKind(), letter))) {
            var first = document.getPage(0).getMediaBox();
            var second = document.getPage(1).getMediaBox();
            assertThat(first.getWidth()).isCloseTo(595.2756f, within(1e-4f));
            assertThat(first.getHeight()).isCloseTo(841.8898f, within(1e-4f));
            assertThat(second.getWidth()).isCloseTo(612f, within(1e-4f));
            assertThat(second.getHeight()).isCloseTo(792f, within(1e-4f));
        }
    }

    /** 600 mm at 1:10 are 60 mm, 170.0787 units of 1/72 in (PDF reference). */
    @Test
    void sixtyMillimetresAre170PdfUnits() throws IOException {
        try (var document = Loader.loadPDF(pdf(everyKind()))) {
            var tokens = new PDFStreamParser(document.getPage(0)).parse();
            int move = firstOperator(tokens, "m");
            int line = firstOperator(tokens, "l");
            double from = ((COSNumber) tokens.get(move - 2)).floatValue();
            double to = ((COSNumber) tokens.get(line - 2)).floatValue();
            assertThat(to - from).isCloseTo(170.0787, within(1e-4));
            assertThat(tokens.get(line - 2)).isInstanceOf(COSFloat.class);
        }
    }

    private static int firstOperator(List<Object> tokens, String name) {
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i) instanceof Operator operator && operator.getName().equals(name)) {
                return i;
            }
        }
        throw new AssertionError("no operator " + name);
    }

    /** CSS Values and Units: 96 px are 1 in, so 1 mm is 3.7795275591 px and 4 ft are 4608 px. */
    @Test
    void anSvgUnitIsOneMillimetre() throws Exception {
        var fourFeet = new Drawing("four feet", 4 * 304.8, 100, List.of());
        var root = parse(svg(fourFeet));
        assertThat(root.getAttribute("width")).isEqualTo("1219.2mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 1219.2 100");

        double pixelsPerMm = 96 / 25.4;
        assertThat(pixelsPerMm).isCloseTo(3.7795275591, within(1e-9));
        double millimetres = Double.parseDouble(root.getAttribute("width").replace("mm", ""));
        assertThat(millimetres * pixelsPerMm).isCloseTo(4608, within(1e-9));
    }

    @Test
    void svgIsWellFormedAndKeepsTextAsText() throws Exception {
        var texts = parse(svg(everyKind())).getElementsByTagName("text");
        assertThat(texts.getLength()).isEqualTo(3);
        assertThat(texts.item(0).getTextContent()).isEqualTo(SIGNS);
    }

    private static Element parse(String svg) throws Exception {
        var bytes = svg.getBytes(StandardCharsets.UTF_8);
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(bytes))
                .getDocumentElement();
    }

    @Test
    void pdfTextCanBeReadBackSignsIncluded() throws IOException {
        try (var document = Loader.loadPDF(pdf(everyKind()))) {
            assertThat(new PDFTextStripper().getText(document)).contains(SIGNS).contains("no sign: ? ?");
        }
    }

    @Test
    void theSameDrawingGivesTheSameBytesInAnyLocale() throws IOException {
        var pdf = pdf(everyKind());
        var svg = svg(everyKind());
        var before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(pdf(everyKind())).isEqualTo(pdf);
            assertThat(svg(everyKind())).isEqualTo(svg);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void nothingInThePdfIsCompressedOrDated() throws IOException {
        var raw = new String(pdf(everyKind()), StandardCharsets.ISO_8859_1);
        assertThat(raw)
                .doesNotContain("FlateDecode")
                .doesNotContain("CreationDate")
                .doesNotContain("ModDate");
    }

    /** Judged by the PDF library's own reading of the font, which rounds each letter to 1/1000 of its size. */
    @Test
    void measuredWidthIsTheWidthThatThePdfPrints() throws IOException {
        var measure = TextMeasure.shipped();
        try (var document = new PDDocument()) {
            var fonts = new PdfFonts(document);
            for (var weight : Weight.values()) {
                assertThat(measure.width(SIGNS, 10, weight))
                        .isCloseTo(fonts.of(weight).getStringWidth(SIGNS) / 100, within(0.05));
            }
        }
    }
}
