package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.standwright.drawing.Drawing;

/**
 * Drawings as the pages of one PDF, with text that stays text. The same drawings give the same bytes everywhere: no
 * dates, a fixed document ID, and plain streams, since compressed ones differ from one Java runtime to the next.
 */
public final class PdfWriter {
    /** PDF's unit is 1/72 in. */
    static final double POINTS_PER_MM = 72 / 25.4;

    private PdfWriter() {}

    /** Writes one page a drawing, each of its drawing's size; the stream stays open. */
    public static void write(List<Drawing> pages, OutputStream out) throws IOException {
        try (var document = new PDDocument()) {
            document.setDocumentId(0L);
            document.getDocumentInformation().setTitle(pages.get(0).title());
            var fonts = new PdfFonts(document);
            for (var drawing : pages) {
                draw(drawing, document, fonts);
            }
            document.save(OutputStream.nullOutputStream(), CompressParameters.NO_COMPRESSION); // cuts fonts to subsets
            fonts.unpack();
            document.save(out, CompressParameters.NO_COMPRESSION);
        }
    }

    private static void draw(Drawing drawing, PDDocument document, PdfFonts fonts) throws IOException {
        var page = new PDPage(new PDRectangle(points(drawing.width()), points(drawing.height())));
        document.addPage(page);
        try (var content =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, false, false)) {
            var ink = new PdfInk(content, fonts);
            for (var shape : drawing.shapes()) {
                shape.accept(ink);
            }
        }
    }

    static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
