package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.export.PdfWriter;
import org.standwright.unit.Units;

/** Every choice that a stand may hold, on paper. */
class MixedPacketTest {
    private static String words;

    @BeforeAll
    static void print() throws IOException {
        words = text(Jobs.packet(MixedStand.in(Units.MM)));
    }

    /** Counted by hand: 2 × (500 + 3.2) + 2 × (480 + 3.2) = 1972.8 mm, from one bar of 2400. */
    @Test
    void barsAreListedByThemselves() {
        assertThat(words)
                .contains("oak strip, section 40 × 20 mm: 4 pieces, together 2 m with a cut of 3.2 mm for each.")
                .contains("From bars of 2400 mm, 1 to buy (proved minimal): bar 1: ");
    }

    @Test
    void doorsShelvesAndOpeningsAreListed() {
        assertThat(words)
                .contains("1.2 424 × 300 left hinge 35")
                .contains("1 door 1.2", "on pins 128", "fixed, housed 80")
                .contains("bay 2, clear: vacuum", "door 2b.2", "drawer 2a.1");
    }

    @Test
    void theMachinesPlaceAndTheHolesAreListed() {
        assertThat(words)
                .contains("Operator at the front. Boards go in at the left.")
                .contains("4 × hexagon bolt M10 × 90: machine")
                .contains("dust hose 360 500 Ø 66 through")
                .contains("opening under plate 360 250 220 × 180 10 through");
    }

    @Test
    void saysHowTheHeightWasFoundAndThatItIsMirrored() {
        assertThat(words)
                .contains("2 mm below the table saw, which stands 902 mm above the floor: nominally 900 mm, to be set "
                        + "from 885 to 920 mm.")
                .contains("Mirrored: ");
    }

    /** Shop practice, common practice without a source: the order in which everything can still be reached. */
    @Test
    void theStepsFollowEachOther() {
        assertThat(words)
                .containsSubsequence(
                        "Cover the edges",
                        "Bore the rows for the shelf pins",
                        "Screw the runners, kickers and stops",
                        "Dry fit",
                        "Glue and dowel",
                        "Fit the back",
                        "Put the bolts in from above",
                        "Measure every opening",
                        "Set the drawer fronts",
                        "Put four pins",
                        "hang the doors",
                        "Tighten all bolts again after the first hours of use.")
                .doesNotContain("Bore for the pulls");
    }

    /** Counted in CutListTest; here it must be on the list of what to buy. */
    @Test
    void edgesAreMarkedAndTheirTapeIsBought() {
        assertThat(words).contains("banded with birch tape: all four edges", "birch tape: ", "with 10 % over");
    }

    @Test
    void noTextLiesOnAnother() {
        var measure = TextMeasure.shipped();
        for (var unit : List.of(Units.MM, Units.INCH)) {
            for (var page : Jobs.packet(MixedStand.in(unit))) {
                var texts = Lettering.of(page.shapes(), measure).texts();
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
    }

    private static String text(List<Drawing> pages) throws IOException {
        var out = new ByteArrayOutputStream();
        PdfWriter.write(pages, out);
        try (var document = Loader.loadPDF(out.toByteArray())) {
            var stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).lines().map(String::strip).collect(Collectors.joining(" "));
        }
    }
}
