package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutList;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.export.PdfWriter;
import org.standwright.packet.page.PageFrame;
import org.standwright.packet.words.SecondStage;

class PacketTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    static List<StandDesign> designs() {
        return List.of(Jobs.metric(), Jobs.inches(), Jobs.plinth(), Jobs.bench(), Jobs.wide(), Jobs.longNames());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void noTextLiesOnAnotherAndAllLieWithinTheMargins(StandDesign design) {
        for (var page : Jobs.packet(design)) {
            var texts = Lettering.of(page.shapes(), MEASURE).texts();
            for (int i = 0; i < texts.size(); i++) {
                assertWithinMargins(texts.get(i), page);
                for (int j = 0; j < i; j++) {
                    assertThat(Lettering.overlap(
                                    texts.get(i).box(), texts.get(j).box()))
                            .as("'%s' on '%s', %s", texts.get(i), texts.get(j), page.title())
                            .isFalse();
                }
            }
        }
    }

    private static void assertWithinMargins(Lettering.Placed text, Drawing page) {
        double rounding = 1e-9;
        var box = text.box();
        assertThat(box.x0() >= PageFrame.SIDE - rounding
                        && box.x1() <= page.width() - PageFrame.SIDE + rounding
                        && box.y0() >= PageFrame.EDGE - rounding
                        && box.y1() <= page.height() - PageFrame.EDGE + rounding)
                .as("%s, %s", text, page.title())
                .isTrue();
    }

    @Test
    void metricPacketIsA4AndHasEverySection() throws IOException {
        var pages = Jobs.packet(Jobs.metric());

        assertThat(pages.get(0).width()).isCloseTo(210, within(1e-9));
        assertThat(text(pages))
                .contains("Height stack", "Views", "Drawers", "Measure, then cut", "Cut list", "Hardware")
                .contains("Sheet plans", "Assembly order", "Findings", "Cautions")
                .contains("page 1 of " + pages.size(), "page " + pages.size() + " of " + pages.size())
                .contains("Sum = working height 900 fixed")
                .contains("lengths in millimetres unless marked");
    }

    /** Added by hand, as printed: levelers 31/32 to 2 3/8, usually 1 9/16; 36 − 19/32 and 36 + 13/16. */
    @Test
    void inchPacketIsLetterAndReadsInFractions() throws IOException {
        var pages = Jobs.packet(Jobs.inches());

        assertThat(pages.get(0).width()).isCloseTo(8.5 * 25.4, within(1e-9));
        assertThat(pages.get(0).height()).isCloseTo(11 * 25.4, within(1e-9));
        assertThat(text(pages)).contains("Sum = working height 36 35 13/32 to 36 13/16", "lengths in inches");
    }

    /** Twice the side space of the slide comes off the opening: 2 × 13.0 = 26.0 mm. */
    @Test
    void saysHowToMeasureTheOpeningBeforeTheBoxIsCut() throws IOException {
        assertThat(oneLine(text(Jobs.packet(Jobs.metric()))))
                .contains("Bay 1: opening measured, front ___________ back ___________; box width = smaller − 26 mm")
                .contains("(drawn: opening 400, box 374)");
        assertThat(oneLine(text(Jobs.packet(Jobs.inches())))).contains("box width = smaller − 1 1/32 in (26 mm)");
    }

    /** Every caution is printed with every stand, with the source of each figure: OSHA, NIOSH. */
    @Test
    void alwaysPrintsTheCautionsWithTheirSources() throws IOException {
        assertThat(oneLine(text(Jobs.packet(Jobs.plinth()))))
                .contains(
                        "Measure your own machine", "Disconnect the machine", "Guards stay on", "Wood dust", "Lifting")
                .contains("within 3.2 mm (1/8 in) of the wheel", "(29 CFR 1910.215)", "(29 CFR 1910.212(b))")
                .contains("NIOSH recommends 1 mg/m³", "manual, local codes and licensed practice");
    }

    /** Common practice, no source: what the bottom covers is in place before the bottom covers it. */
    @Test
    void boltsAndNutsAreInTheBlocksBeforeTheBottomCoversThem() throws IOException {
        assertThat(oneLine(text(Jobs.packet(Jobs.metric()))))
                .containsSubsequence(
                        "Glue the two layers of each block strip",
                        "Put the caster bolts in from above",
                        "from inside the carcass through the bottom",
                        "Put the casters over the bolts",
                        "Lay the lower layer of the worktop on the sub-top",
                        "reach into the upper layer",
                        "Lock all casters",
                        "none closer than 30 mm to a worktop screw",
                        "Measure every opening");
        assertThat(oneLine(text(Jobs.packet(Jobs.inches()))))
                .containsSubsequence("Drive the leveler nuts in from above", "screw the levelers in");
        assertThat(oneLine(text(Jobs.packet(Jobs.plinth())))).contains("through the holes in the bottom");
    }

    @Test
    void saysOfEachFindingWhatCuresItAndWhyItIsAccepted() throws IOException {
        assertThat(oneLine(text(Jobs.packet(Jobs.metric()))))
                .containsSubsequence("stop stand It tips when pushed", "caution drawer 1.2", "accepted caution worktop")
                .contains("Limit: at most 0.5 mm, a stop above 1.5 mm (common practice, no source).")
                .contains("Cure: a second worktop layer, then 0.12 mm.")
                .contains("Accepted by the maker of this design: Nothing heavier than a lamp ever stands on it.");
    }

    /** The worst place alone: 0.61 of 0.5 mm. */
    @Test
    void showsHowMuchOfEachLimitIsUsedAndHowTheFiguresWereFound() throws IOException {
        assertThat(oneLine(text(Jobs.packet(Jobs.metric()))))
                .contains("Does it sag? (part-sag) worktop 0.61 mm at most 0.5 mm 1.22")
                .contains("How the figures were found")
                .contains("part-sag sag = k W: W = 320 N, all that is on it; gives 0.61 mm");
    }

    /** Common practice, no source: drawers are cut to the openings as built; inset fronts too, overlay fronts not. */
    @Test
    void drawerPartsAndInsetFrontsWaitForTheSecondStage() {
        assertThat(stageTwo(Jobs.metric())).containsOnly("drawer side", "box front", "box back", "drawer bottom");
        assertThat(stageTwo(Jobs.inches()))
                .containsOnly("drawer side", "box front", "box back", "drawer bottom", "drawer front");
    }

    private static Set<String> stageTwo(StandDesign design) {
        var stand = StandBuilder.build(design);
        var later = SecondStage.of(stand);
        return CutList.of(stand.assembly(), design.unit()).lines().stream()
                .filter(later::holds)
                .map(line -> line.part().name())
                .collect(Collectors.toSet());
    }

    /** A board of 2440 × 1220 mm at 1:15 takes 163 × 81 mm: two of them fill an upright A4 page. */
    @Test
    void twoReadableBoardsShareAPage() throws IOException {
        var boards = Jobs.packet(Jobs.metric()).stream()
                .filter(page -> says(page, "Scale 1:15, millimetres"))
                .toList();

        assertThat(text(boards)).contains("board 18, sheet 1 of 2", "board 18, sheet 2 of 2");
        assertThat(boards).allMatch(page -> page.height() > page.width());
        assertThat(boards).anyMatch(page -> says(page, "sheet 2 of 2") && says(page, "sheet 1 of 1"));
    }

    private static boolean says(Drawing page, String words) {
        return Lettering.of(page.shapes(), MEASURE).texts().stream()
                .anyMatch(text -> text.words().contains(words));
    }

    @Test
    void aStandWithoutAMachineHasNoStepForOne() throws IOException {
        assertThat(oneLine(text(Jobs.packet(Jobs.bench())))).doesNotContain("lift it on", "machine's bolts");
    }

    @Test
    void findingsComeHeaviestFirst() throws IOException {
        var text = text(Jobs.packet(Jobs.metric()));
        assertThat(text.indexOf("It tips")).isLessThan(text.indexOf("The drawer is 374 mm wide"));
    }

    @Test
    void theSameStandGivesTheSameBytes() throws IOException {
        assertThat(pdf(Jobs.packet(Jobs.metric()))).isEqualTo(pdf(Jobs.packet(Jobs.metric())));
    }

    private static byte[] pdf(List<Drawing> pages) throws IOException {
        var out = new ByteArrayOutputStream();
        PdfWriter.write(pages, out);
        return out.toByteArray();
    }

    private static String text(List<Drawing> pages) throws IOException {
        try (var document = Loader.loadPDF(pdf(pages))) {
            var stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }

    private static String oneLine(String text) {
        return text.replace('\u00a0', ' ').lines().map(String::strip).collect(Collectors.joining(" "));
    }
}
