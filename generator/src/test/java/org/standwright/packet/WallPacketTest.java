package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.CleatWall;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.wall.BuiltWalls;
import org.standwright.export.PdfWriter;
import org.standwright.packet.page.PageFrame;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.SheetPlanner;

class WallPacketTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    static Stream<CleatWall> walls() {
        return BuiltWalls.NAMES.stream().map(BuiltWalls::of);
    }

    static List<Drawing> packet(CleatWall walls) {
        var list = CutList.of(walls.assembly(), walls.design().unit());
        var plan = SheetPlanner.plan(Stock.of(walls.design()), list);
        return Packet.pages(walls, list, plan, List.of(), List.of(), BuiltWalls.labels(walls));
    }

    @ParameterizedTest
    @MethodSource("walls")
    void noTextLiesOnAnotherAndAllLieWithinTheMargins(CleatWall walls) {
        for (var page : packet(walls)) {
            var texts = Lettering.of(page.shapes(), MEASURE).texts();
            for (int i = 0; i < texts.size(); i++) {
                var box = texts.get(i).box();
                assertThat(box.x0() >= PageFrame.SIDE - 1e-9
                                && box.x1() <= page.width() - PageFrame.SIDE + 1e-9
                                && box.y0() >= PageFrame.EDGE - 1e-9
                                && box.y1() <= page.height() - PageFrame.EDGE + 1e-9)
                        .as("%s, %s", texts.get(i), page.title())
                        .isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(Lettering.overlap(box, texts.get(j).box()))
                            .as("'%s' on '%s', %s", texts.get(i), texts.get(j), page.title())
                            .isFalse();
                }
            }
        }
    }

    /** Rows at 38, 47, 56 … in and strips 3 7/16 in high, the level line at 40 in. */
    @Test
    void printsHeightsFromTheLevelLineWithTheirSign() throws IOException {
        var text = text(packet(BuiltWalls.of("panel-wall")));

        assertThat(text)
                .contains("row 2 +7 +3 9/16 9", "row 1 −2 −5 7/16 –")
                .contains("row 3 +16", "level line: 0 of the stick", "Do not measure from the floor");
    }

    /** Common practice, no source: nothing is driven before cables were looked for. */
    @Test
    void cablesAreLocatedBeforeAnythingIsDriven() throws IOException {
        assertThat(text(packet(BuiltWalls.of("door-wall"))))
                .containsSubsequence(
                        "Order of work",
                        "Find the studs",
                        "Locate cables and pipes before driving anything",
                        "licensed practice and local codes",
                        "Strike the level line",
                        "Make the story stick",
                        "Put up the strips",
                        "Drive ",
                        "pull each strip firmly",
                        "Hang the holders",
                        "Tighten the screws again");
    }

    /** By hand: 2 × 90 − 17.7 + 3.2 × √2 = 166.8; 17.7 × √2 = 25.0 mm. */
    @Test
    void saysHowTheCleatsAreRipped() throws IOException {
        assertThat(text(packet(BuiltWalls.of("door-wall"))))
                .contains("Ripping them", "from square, away from the fence", "Nothing is trapped")
                .contains("Support both sides", "off the sharp tips")
                .containsPattern("2 L − t tan θ \\+ k / cos θ = 16\\d\\.\\d mm");
    }

    /**
     * By hand, of a long face of 110 in 20.5 mm at 45°, 2 mm off the tips: 110 − 20.5 = 89.5, 110 − 2 = 108, and
     * 2 × 110 − 20.5 + 3.2 × √2 = 204.0 mm. The face on the table is the short one of the strip at the fence.
     */
    @Test
    void theCuttingOrderSetsTheFenceForTheBevels() throws IOException {
        assertThat(text(packet(BuiltWalls.of("garage-wall"))))
                .containsSubsequence(
                        "Cutting order: Birch plywood 21 mm",
                        "leaning away from the fence; good face up",
                        "fence to the kerf at the table 89.5 mm",
                        "two equal strips of each blank 204 mm wide: A + A (2 of them)",
                        "comes out with its long face up",
                        "By themselves: ",
                        "108 mm wide, their tips off already",
                        "fence 108 mm against the square edge, long face down: 2 mm off");
    }

    @Test
    void aWallOfMasonryIsToldOfAnchorsAndNotOfWood() throws IOException {
        assertThat(text(packet(BuiltWalls.of("garage-wall"))))
                .contains("anchor, its number at its foot", "Anchors", "Drill 8 mm holes for nylon anchor 8 × 40 mm")
                .contains("set each anchor as its maker says", "wood screw 5.0 mm, 70 mm, with washer 13 mm")
                .doesNotContain("every stud", "bite in wood", "washer head", "Countersunk wood screw 5.0");
    }

    @Test
    void saysNothingOfMachinesBoltsOrLaterStagesThatAWallHasNot() throws IOException {
        for (var name : BuiltWalls.NAMES) {
            assertThat(text(packet(BuiltWalls.of(name))))
                    .contains("against your own wall and stock")
                    .doesNotContain("your own machine", "finished stand", "Tighten bolts", "stage 2");
        }
    }

    @Test
    void stripsRunThroughOnlyIntoCornersThatTheyReach() throws IOException {
        for (var name : BuiltWalls.NAMES) {
            var walls = BuiltWalls.of(name);
            boolean reached = walls.walls().subList(0, walls.walls().size() - 1).stream()
                    .anyMatch(wall -> wall.strips().stream()
                            .anyMatch(strip -> strip.along().to()
                                    > wall.outline().bounds().x1()
                                            - walls.design().cleat().thickness()
                                            - 3));
            assertThat(text(packet(walls)).contains("strips of the left wall run through"))
                    .as(name)
                    .isEqualTo(reached);
        }
    }

    @Test
    void saysWhatIsLeftOutAndWhy() throws IOException {
        var walls = BuiltWalls.of("door-wall");
        var text = text(packet(walls));

        assertThat(walls.unplaced()).isNotEmpty();
        walls.unplaced()
                .forEach(unplaced -> assertThat(text).contains(unplaced.holder().name()));
        assertThat(text).contains("Not hung");
        assertThat(walls.wall(1).shortRuns().isEmpty()).isEqualTo(!text.contains("Bare wall without a strip"));
    }

    /** By hand: brackets of 12 at both ends of a shelf 495 wide, 5 things of 75 with 6 gaps of 20. */
    @Test
    void eachHolderIsDrawnWithItsBoardsAndWhereTheySit() throws IOException {
        var walls = BuiltWalls.of("bench-wall");
        var text = text(packet(walls));
        var list = CutList.of(walls.assembly(), walls.design().unit());
        var label = list.lines().stream()
                .filter(line -> line.members().contains("glue shelf bracket 1"))
                .findFirst()
                .orElseThrow()
                .label();

        walls.holders().forEach(holder -> assertThat(text).contains(holder.name() + ": "));
        assertThat(text)
                .contains("glue shelf: shelf", "Holds 5 of 75 × 75 × 220, together 4.5 kg.")
                .contains(label + " bracket 2 ")
                .contains("left faces 0, 483 from the left edge; lower edge flush with the back's")
                .contains("through the back into the hanger, glued too", "wood glue: hanger on its back");
    }

    private static String text(List<Drawing> pages) throws IOException {
        var out = new ByteArrayOutputStream();
        PdfWriter.write(pages, out);
        try (var document = Loader.loadPDF(out.toByteArray())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
