package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.design.Designs;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.StockSheet.Source;
import org.standwright.design.kit.Trim;
import org.standwright.design.stand.StandBuilder;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.export.PdfWriter;
import org.standwright.export.SvgWriter;
import org.standwright.packet.words.SecondStage;
import org.standwright.part.SheetGood;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.unit.Money;

/** A stand from boards bought and at hand, broken down by a hand-held saw, on paper. */
class SheetSectionTest {
    private static final Saw SAW = new Saw(
            3.2,
            Trim.all(5),
            OptionalInt.empty(),
            Saw.First.EITHER,
            OptionalDouble.of(1250),
            OptionalDouble.of(700),
            300,
            Optional.of(new BreakDown(2.2, 5)));

    private static List<Drawing> pages;
    private static String words;

    @BeforeAll
    static void print() throws IOException {
        pages = pages(StandBuilder.build(Designs.planerStand()));
        words = words(pages);
    }

    static List<Drawing> pages(Stand stand) {
        var list = CutList.of(stand.assembly(), stand.design().unit());
        var later = SecondStage.of(stand).labels(list);
        var mating = Set.of("G", "H", "I");
        var whole = new CutList(list.lines(), list.hardware(), new Cutting(later, Set.of(), mating, List.of()));
        return Packet.pages(stand, whole, plan(stand, whole), Jobs.FINDINGS, List.of());
    }

    private static SheetPlan plan(Stand stand, CutList list) {
        var boards = new ArrayList<StockSheet>();
        for (var good : stand.design().sheets()) {
            boards.add(bought(good));
        }
        boards.add(atHand(Designs.BOARD_18));
        return SheetPlanner.plan(new Stock(boards, SAW, Keep.USUAL), list);
    }

    private static StockSheet bought(SheetGood good) {
        return new StockSheet(
                good.material().name(),
                good.material(),
                good.length(),
                good.width(),
                good.material().thickness(),
                OptionalInt.empty(),
                Optional.of(Money.parse("62.00 EUR")),
                Source.BOUGHT);
    }

    private static StockSheet atHand(SheetGood good) {
        return new StockSheet(
                "rest of the bench",
                good.material(),
                900,
                700,
                17.6,
                OptionalInt.of(1),
                Optional.empty(),
                Source.AT_HAND);
    }

    @Test
    void boardsToBuyAndAtHandAreListedWithTheirPrices() {
        assertThat(words)
                .contains("Count Board From Size Thickness Each Together")
                .containsPattern("\\d board 18 to buy 2440 × 1220 18 62\\.00 EUR \\d+\\.00 EUR")
                .contains("Boards with a price together: ");
    }

    @Test
    void whatBecomesOfTheBoardsAddsUp() {
        assertThat(words)
                .contains("Parts Kerf Trim Offcuts Waste Sum")
                .containsPattern("board 18 \\d sheets?( to buy)?(; proved minimal|, bound \\d, gap \\d)"
                        + "( \\d+\\.\\d %){5} 100\\.0 %");
    }

    /** Shop practice: first the hand-held saw, good face down; then the table saw, good face up. */
    @Test
    void theCuttingOrderGoesFromTheHandHeldSawToTheSaw() {
        assertThat(words)
                .containsSubsequence(
                        "Cutting order",
                        "The saw's own manual",
                        "Cutting order: board 18",
                        "good face down",
                        "leave 5 mm that is recut",
                        "Set-up Cut Guide Done Sheet From Cuts Falls free",
                        "Saw: good face up",
                        "Set-up Cut Fence Done Sheet From Cuts Falls free",
                        "recut");
    }

    @Test
    void theSecondStageComesLast() {
        assertThat(words)
                .containsSubsequence(
                        "Cutting order: ", "Cutting order, second stage", "Wait until the carcass is glued")
                .containsSubsequence("Cutting order, second stage", "Second stage: ", "Assembly order");
    }

    @Test
    void whatIsTooShortToBePushedIsCautioned() {
        assertThat(words)
                .containsPattern("Caution, cuts? [\\d, –]+ \\([^)]+\\): what is pushed lies along the fence for less "
                        + "than 300 mm");
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
