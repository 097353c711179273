package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.sawing.Block;

class BlockShapesTest {
    private static final Material WOOD = new Material("veneered board", 18, 650, Grain.ALONG_LENGTH);
    private static final double UNIT = 1.0 / SheetUnit.PER_MM;

    static LongStream seeds() {
        return Seeds.fewOrMany(40, 1000);
    }

    @Test
    void takesTheSumOfTheSidesAndAKerfBetweenEachTwo() {
        var lines = List.of(line("A", 596, 120), line("B", 596, 150), line("C", 596, 200));

        assertThat(size(shapes(3.2).of(strip(Along.WIDTH, "A", "B", "C"), lines, false), 3.2))
                .isEqualTo("596.0 x 476.4");
        assertThat(size(
                        shapes(3.2)
                                .of(
                                        strip(Along.LENGTH, "A", "B"),
                                        List.of(line("A", 120, 596), line("B", 150, 596)),
                                        false),
                        3.2))
                .isEqualTo("273.2 x 596.0");
    }

    @Test
    void leavesWhatIsCutOffLaterOnEveryEdgeOfABlank() {
        var blank = new Together(Kind.ONE_BLANK, List.of("A", "A", "A"), Along.WIDTH, 5);
        var line = line("A", 460, 80);

        var block = shapes(3).of(blank, List.of(line, line, line), false);

        assertThat(size(block, 3)).isEqualTo("470.0 x 256.0");
        assertThat(block.parting()).isEqualTo(Block.Parting.LATER);
        assertThat(block.label()).isEqualTo("A + A + A");
    }

    @Test
    void refusesAStripOfDifferentSides() {
        var lines = List.of(line("A", 596, 120), line("B", 590, 150));

        assertThatThrownBy(() -> shapes(3).of(strip(Along.WIDTH, "A", "B"), lines, false))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("pieces [A, B] are no strip: they differ in length. Keep only those together that agree,"
                        + " or on one sheet.");
    }

    /** 2 L - t + k √2 = w at 45°: computed from the geometry, own derivation. */
    @ParameterizedTest
    @CsvSource({
        "6, 0.75, 0.125, 3.28661, 2.53661, 25.4",
        "200, 18, 3.2, 106.737, 88.737, 1",
    })
    void ripsTwoStripsWithABevelFromOneBlank(
            double width, double thickness, double kerf, double longFace, double shortFace, double mm) {
        var strip = strip("A", 1000, longFace * mm, thickness * mm, 4);

        var blocks = Blocks.of(List.of(strip), Cutting.PLAIN, List.of(), shapes(kerf * mm));

        var block = blocks.blocks().get(0);
        assertThat(blocks.types()).hasSize(1);
        assertThat(blocks.types().get(0).count()).isEqualTo(2);
        assertThat(block.parting()).isEqualTo(Block.Parting.BEVEL);
        assertThat(SheetUnit.mm(block.inner().width() - SheetUnit.up(kerf * mm)))
                .isCloseTo(width * mm, within(2e-3));
        assertThat(longFace - shortFace).isCloseTo(thickness, within(1e-9));
    }

    /** What comes off the tips comes off after the rip: the board is as wide as for sharp strips. */
    @Test
    void ripsStripsWhoseTipsAreTakenOffFromABoardForSharpOnes() {
        var wood = new Material("board", 18, 650, Grain.ALONG_LENGTH);
        var blunt = Part.blank("cleat", wood, 1000, 104.737).with(new Bevel(Edge.Y1, Face.BENCH, 45, 16));
        var line = new CutLine("A", blunt, Collections.nCopies(2, "cleat"), List.of());

        var blocks = Blocks.of(List.of(line), Cutting.PLAIN, List.of(), shapes(3.2));

        assertThat(blocks.blocks().get(0).parting()).isEqualTo(Block.Parting.BEVEL);
        assertThat(SheetUnit.mm(blocks.blocks().get(0).inner().width() - SheetUnit.up(3.2)))
                .isCloseTo(200, within(2e-3));
    }

    @Test
    void leavesAnOddStripByItselfAndPairsItWithAnother() {
        var long3 = strip("A", 1000, 100, 18, 3);
        var one = strip("B", 1000, 80, 18, 1);
        var other = strip("C", 900, 80, 18, 1);

        var blocks = Blocks.of(List.of(long3, one, other), Cutting.PLAIN, List.of(), shapes(3));

        assertThat(blocks.blocks()).extracting(Block::label).containsExactly("A + A", "A + B", "C");
        assertThat(blocks.blocks().get(2).parting()).isEqualTo(Block.Parting.NONE);
    }

    /** The board that is exactly as large as the formula says takes the strip, one unit less does not. */
    @ParameterizedTest
    @MethodSource("seeds")
    void cutsAStripFromABoardOfExactlyItsSizeAndNotOneUnitLess(long seed) {
        var random = new SplittableRandom(seed);
        double kerf = random.nextInt(0, 50) / 10.0;
        var along = random.nextBoolean() ? Along.LENGTH : Along.WIDTH;
        var lines = IntStream.range(0, random.nextInt(2, 7))
                .mapToObj(i -> side("P" + i, along, 400, random.nextInt(50, 3000) / 10.0))
                .toList();
        double sum = kerf * (lines.size() - 1)
                + lines.stream()
                        .mapToDouble(line -> along == Along.LENGTH
                                ? line.part().length()
                                : line.part().width())
                        .sum();
        var labels = lines.stream().map(CutLine::label).toList();
        var group = new Together(Kind.ONE_STRIP, labels, along, 0);
        double length = along == Along.LENGTH ? sum : 400;
        double width = along == Along.LENGTH ? 400 : sum;

        var sheet = plan(length, width, kerf, lines, group)
                .materials()
                .get(0)
                .sheets()
                .get(0);

        assertThat(sheet.pieces()).extracting(PlacedPiece::label).containsExactlyInAnyOrderElementsOf(labels);
        assertThat(sheet.offcuts()).isEmpty();
        assertThatThrownBy(() -> plan(length - UNIT, width, kerf, lines, group))
                .isInstanceOf(ImpossiblePlanException.class);
        assertThatThrownBy(() -> plan(length, width - UNIT, kerf, lines, group))
                .isInstanceOf(ImpossiblePlanException.class);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cutsPiecesOfOneSheetFromOneBlockNoLargerThanAStrip(long seed) {
        var random = new SplittableRandom(seed);
        double kerf = random.nextInt(0, 50) / 10.0;
        var lines = IntStream.range(0, random.nextInt(2, 9))
                .mapToObj(i -> line("P" + i, random.nextInt(50, 6000) / 10.0, random.nextInt(50, 4000) / 10.0))
                .toList();
        var group =
                new Together(Kind.ONE_SHEET, lines.stream().map(CutLine::label).toList(), Along.WIDTH, 0);

        var block = shapes(kerf).of(group, lines, false);

        assertThat(pieces(block.inner())).hasSameSizeAs(lines);
        long strip = lines.stream()
                        .mapToLong(line -> units(line.part().length(), kerf))
                        .sum()
                * lines.stream()
                        .mapToLong(line -> units(line.part().width(), kerf))
                        .max()
                        .orElseThrow();
        assertThat((long) block.inner().length() * block.inner().width()).isLessThanOrEqualTo(strip);
        double length = SheetUnit.mm(block.inner().length()) - kerf;
        double width = SheetUnit.mm(block.inner().width()) - kerf;
        assertThat(plan(length, width, kerf, lines, group).materials().get(0).sheets())
                .hasSize(1);
    }

    @Test
    void cutsABlankOnOneSheetWithTheRestAround() {
        var group = new Together(Kind.ONE_BLANK, List.of("A", "A"), Along.WIDTH, 5);

        var plan = plan(1000, 500, 3, List.of(line("A", 400, 60, 5)), group);

        assertThat(plan.materials().get(0).sheets().get(0).pieces())
                .extracting(PlacedPiece::label)
                .containsExactlyInAnyOrder("A + A", "A", "A", "A");
    }

    @Test
    void refusesMorePiecesTogetherThanThereAre() {
        var group = new Together(Kind.ONE_STRIP, List.of("A", "A"), Along.WIDTH, 0);

        assertThatThrownBy(() -> plan(1000, 500, 3, List.of(line("A", 400, 60)), group))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("more pieces 'A' are to stay together than the 1 that the cut list has. Keep them apart.");
    }

    @Test
    void refusesToKeepPiecesOfTwoMaterialsTogether() {
        var other = SheetJob.line(new Material("other", 18, 650, Grain.NONE), "B", 400, 60, 1);
        var group = new Together(Kind.ONE_STRIP, List.of("A", "B"), Along.WIDTH, 0);

        assertThatThrownBy(() -> plan(1000, 500, 3, List.of(line("A", 400, 60), other), group))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("piece 'B' cannot stay together with [A, B]: it is not cut from the same sheets."
                        + " Keep them apart.");
    }

    private static SheetPlan plan(double length, double width, double kerf, List<CutLine> lines, Together group) {
        var good = new SheetGood(WOOD, length, width, Optional.empty(), Optional.empty());
        var stock = new Stock(List.of(StockSheet.bought(good)), new Saw(kerf, 0), new Keep(10, 10));
        var cutting = new Cutting(Set.of(), Set.of(), Set.of(), List.of(group));
        return SheetPlanner.plan(stock, new CutList(lines, List.of(), cutting));
    }

    private static List<CutNode> pieces(CutNode node) {
        if (node instanceof CutNode.Split split) {
            return split.nodes().stream()
                    .flatMap(inner -> pieces(inner).stream())
                    .collect(Collectors.toCollection(ArrayList::new));
        }
        return node instanceof CutNode.Piece ? List.of(node) : List.of();
    }

    private static BlockShapes shapes(double kerf) {
        return new BlockShapes(KerfAllowance.of(new Saw(kerf, 0)), List.of(), CutRules.free(SheetUnit.up(kerf)));
    }

    private static Together strip(Along along, String... labels) {
        return new Together(Kind.ONE_STRIP, List.of(labels), along, 0);
    }

    private static String size(Block block, double kerf) {
        int blade = SheetUnit.up(kerf);
        return SheetUnit.mm(block.inner().length() - blade) + " x "
                + SheetUnit.mm(block.inner().width() - blade);
    }

    private static long units(double mm, double kerf) {
        return SheetUnit.up(mm) + SheetUnit.up(kerf);
    }

    private static CutLine side(String label, Along along, double common, double other) {
        return along == Along.LENGTH ? line(label, other, common) : line(label, common, other);
    }

    private static CutLine line(String label, double length, double width) {
        return line(label, length, width, 1);
    }

    private static CutLine line(String label, double length, double width, int count) {
        return SheetJob.line(WOOD, label, length, width, count);
    }

    private static CutLine strip(String label, double length, double width, double thickness, int count) {
        var wood = new Material("board", thickness, 650, Grain.ALONG_LENGTH);
        var part = Part.blank("cleat", wood, length, width).with(new Bevel(Edge.Y1, Face.SHOW, 45, thickness));
        return new CutLine(label, part, Collections.nCopies(count, "cleat"), List.of());
    }
}
