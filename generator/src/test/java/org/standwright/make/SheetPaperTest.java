package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Point;
import org.standwright.drawing.TextMeasure;
import org.standwright.export.SvgWriter;
import org.standwright.sheet.SheetUnit;

class SheetPaperTest {
    private static Product product;
    private static List<SheetPaper> papers;

    @BeforeAll
    static void planTheSheets() {
        product = Product.checked(Designs.planerStand());
        papers = product.sheets();
    }

    @Test
    void everySheetOfThePlanHasItsPaper() {
        assertThat(papers)
                .extracting(SheetPaper::sheet)
                .containsExactlyElementsOf(product.plan().materials().stream()
                        .flatMap(material -> material.sheets().stream())
                        .toList());
    }

    /** A label's letters and the rectangle come about in two ways. */
    @Test
    void aPieceIsWhereItsLabelIsWritten() {
        var paper = papers.get(0);
        var piece = paper.sheet().pieces().get(0);
        var rect = paper.onPaper(piece.area());

        assertThat(Lettering.of(paper.drawing().shapes(), TextMeasure.shipped()).texts())
                .anySatisfy(text -> {
                    assertThat(text.words()).isEqualTo(piece.label());
                    assertThat(text.box().x0()).isBetween(rect.x0(), rect.x1());
                    assertThat(text.box().y0()).isBetween(rect.y0(), rect.y1());
                });
    }

    @Test
    void aPointOnPaperIsFoundOnTheBoardAgain() {
        var paper = papers.get(0);
        var area = paper.sheet().pieces().get(0).area();
        var rect = paper.onPaper(area);

        var corner = paper.onBoard(new Point(rect.x1(), rect.y0()));

        assertThat(corner.x()).isCloseTo(SheetUnit.mm(area.endX()), within(1e-6));
        assertThat(corner.y()).isCloseTo(SheetUnit.mm(area.y()), within(1e-6));
    }

    @Test
    void theFilesShowTheSameDrawings() throws IOException {
        var file = Format.files(EnumSet.of(Format.SVG), product).get(0);

        assertThat(text(file.content()))
                .isEqualTo(text(out -> SvgWriter.write(papers.get(0).drawing(), out)));
    }

    private static String text(OutputFile.Content content) throws IOException {
        var bytes = new ByteArrayOutputStream();
        content.writeTo(bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
