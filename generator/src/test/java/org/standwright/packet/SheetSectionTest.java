package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.design.Designs;
import org.standwright.design.stand.StandBuilder;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.export.PdfWriter;
import org.standwright.export.SvgWriter;
import org.standwright.packet.words.SecondStage;

/** A stand from boards bought and at hand, broken down by a hand-held saw, on paper. */
class SheetSectionTest {
    private static List<Drawing> pages;
    private static String words;
    private static String waits;

    @BeforeAll
    static void print() throws IOException {
        var stand = StandBuilder.build(Designs.planerStand());
        var list = CutList.of(stand.assembly(), stand.design().unit());
        var later = SecondStage.of(stand).labels(list);
        waits = new TreeSet<>(later).first();
        var mating = new Cutting(later, Set.of(), Set.of("Y4"), List.of());
        pages = Packet.pages(
                stand,
                new CutList(list.lines(), list.hardware(), mating),
                HandSawn.plan(waits),
                Jobs.FINDINGS,
                Optional.empty(),
                List.of());
        words = words(pages);
    }

    @Test
    void boardsToBuyAndAtHandAreListedWithTheirPrices() {
        assertThat(words)
                .contains("Count Board From Size Thickness Each Together")
                .contains("1 board 18 to buy 2440 × 1220 18 62.00 EUR 62.00 EUR")
                .contains("1 board 18: rest of the bench at hand 900 × 700 17.6")
                .contains("Boards with a price together: 62.00 EUR.")
                .contains("62.00 EUR; proved minimal");
    }

    /** Of 2440 × 1220 + 900 × 700 = 3606800 mm². Blank 1237 × 811 less its cut of 1237 × 4, and so on. */
    @Test
    void whatBecomesOfTheBoardsAddsUp() {
        double boards = 2440 * 1220 + 900 * 700;
        double parts = 1193 * 400 + 600 * 811 + 600 * 400 + 1237 * (400 + 407) + 200 * 100;
        double offcuts = 589 * 811 + 633 * 400 + 696 * 700 + 200 * 596;
        assertThat(words)
                .containsPattern(String.format(
                        Locale.ROOT,
                        "%.1f %% \\d\\.\\d %% \\d\\.\\d %% %.1f %% \\d\\.\\d %% 100\\.0 %%",
                        100 * parts / boards,
                        100 * offcuts / boards));
        assertThat(words)
                .contains("Offcuts to keep of board 18: 589 × 811 (sheet 1), 633 × 400 (sheet 1), 696 × 700 (sheet 2)");
    }

    @Test
    void boardsAreNamedAndTheirOwnThicknessIsSaid() {
        assertThat(words)
                .contains("board 18, sheet 1 of 2")
                .contains("board 18, sheet 2 of 2 (rest of the bench, at hand, measured 17.6 mm)")
                .contains(
                        "sheet 2 is 17.6 mm thick as measured. Pieces of it that sit in dados: Y4. Cut a test dado in "
                                + "scrap from that sheet before theirs.");
    }

    /** Shop practice: the hand-held saw first, good face down; then the table saw, good face up. */
    @Test
    void theCuttingOrderIsAListOfSetUps() {
        assertThat(words)
                .containsSubsequence(
                        "The saw's own manual",
                        "Cutting order: board 18",
                        "good face down. Score the line of each crosscut",
                        "leave 5 mm that is recut",
                        "Set-up Cut Guide Done Sheet From Cuts Falls free",
                        "1 crosscut 1200 1 left 1 ",
                        "Saw: good face up",
                        "Set-up Cut Fence Done Sheet From Cuts Falls free",
                        "2 rip, trim 1215 1 upper 2, 3 ",
                        "3 crosscut, recut 1193 1 left 4 ",
                        "4 rip 400 1 lower 5, 6 5: Y1; 6: Y3 + Y3 (blank, parted later, rest)",
                        "5 crosscut 600 1 left 7 Y2, offcut",
                        "6 crosscut 200 2 left 9 offcut",
                        "7 rip 100 2 lower 10 Y4, offcut");
    }

    @Test
    void theSecondStageComesLast() {
        assertThat(words)
                .containsSubsequence(
                        "Cutting order, second stage",
                        "Wait until the carcass is glued",
                        "Second stage: board 18",
                        "fence is not the stop",
                        "8 crosscut, sled 600 1 left 8 " + waits + ", offcut",
                        "Assembly order");
    }

    /** The smallest piece is 300 mm; cut 10 runs along 200 mm. */
    @Test
    void whatIsTooShortToBePushedIsCautioned() {
        assertThat(words)
                .contains("Caution, board 18, cut 10 (Y4): what is pushed lies along the fence for less than 300 mm");
    }

    @Test
    void blanksSayHowTheyBecomePieces() {
        assertThat(words)
                .contains("parted later", "Blank Y3 + Y3 of board 18, 1237 × 811: machine it whole, then part it");
    }

    @Test
    void warningsStandBeforeTheTableTheyAreAbout() {
        assertThat(words)
                .containsSubsequence(
                        "Cutting order: board 18",
                        "Caution, board 18, cut 10",
                        "Blank Y3 + Y3 of board 18",
                        "Set-up Cut Guide",
                        "Beyond your fence's reach",
                        "Set-up Cut Fence");
    }

    @Test
    void theHandHeldSawSaysHowTheSheetIsTurnedAndWhereTheGuideIsClamped() {
        assertThat(words)
                .containsSubsequence(
                        "the lower edge is", "on the far side", "less the distance from the edge", "blade");
    }

    @Test
    void aProvedPlanSaysNothingOfItsGap() {
        assertThat(words).contains("What becomes of the boards.").doesNotContain("could save the gap");
    }

    @Test
    void theKeyTellsTheSawsApart() {
        assertThat(words).contains("saw cut hand-held saw trim offcut to keep");
    }

    @Test
    void noTextLiesOnAnother() {
        for (var page : pages) {
            var texts = Lettering.of(page.shapes(), TextMeasure.shipped()).texts();
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

    /** SVG 2, color: #rrggbb with equal parts is a grey, as are the words black, white and none. */
    @Test
    void everythingIsBlackWhiteOrGrey() throws IOException {
        for (var page : pages) {
            var out = new ByteArrayOutputStream();
            SvgWriter.write(page, out);
            var colours = Pattern.compile("(?:fill|stroke)=\"([^\"]*)\"").matcher(out.toString(StandardCharsets.UTF_8));
            while (colours.find()) {
                assertThat(colours.group(1)).matches("none|black|white|#(..)\\1\\1|#(.)\\2\\2");
            }
        }
    }

    static String words(List<Drawing> pages) throws IOException {
        var out = new ByteArrayOutputStream();
        PdfWriter.write(pages, out);
        try (var document = Loader.loadPDF(out.toByteArray())) {
            var stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).lines().map(String::strip).collect(Collectors.joining(" "));
        }
    }
}
