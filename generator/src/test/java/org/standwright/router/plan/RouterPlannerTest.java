package org.standwright.router.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RouterPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetJob;

class RouterPlannerTest {
    /** 6.35 + 1.6 = 7.95 mm. */
    private static final Router ROUTER = Routers.of(6.35, 1.6);

    private static final Material PLAIN = new Material("plain board", 18, 650, Grain.NONE);
    private static final Material VENEERED = new Material("veneered board", 18, 650, Grain.ALONG_LENGTH);

    /** Spacing between parts and along the edges: references 9 and vector 57. */
    @Test
    void laysElevenPartsOf100MmAtAPitchOf10795In1220() {
        var job = SheetJob.sheet(1220, 115.9).pieces("A", 100, 100, 11);
        var plan = Routes.plan(job.stock(), job.cutList(), ROUTER);

        assertThat(Routes.boards(plan)).isEqualTo(1);
        var x = pieces(plan).stream()
                .map(piece -> piece.outline().bounds().x0())
                .sorted()
                .toList();
        for (int i = 0; i < 11; i++) {
            assertThat(x.get(i)).isCloseTo(7.95 + 107.95 * i, within(1e-6));
        }
    }

    @Test
    void needsAnotherBoardForTheTwelfth() {
        var job = SheetJob.sheet(1220, 115.9).pieces("A", 100, 100, 12);

        assertThat(Routes.boards(Routes.plan(job.stock(), job.cutList(), ROUTER)))
                .isEqualTo(2);
    }

    /** Four long parts round a small one: no cut from edge to edge parts them. */
    @Test
    void laysAPinwheelOnOneBoardThatNoSawCutsFromOne() {
        var job = SheetJob.sheet(1000, 1000).pieces("A", 592.05, 384.1, 4).pieces("B", 200, 200, 1);
        var plan = Routes.plan(job.stock(), job.cutList(), ROUTER);

        assertThat(Routes.boards(plan)).isEqualTo(1);
        assertThat(Routes.sawn(job.stock(), job.cutList(), ROUTER)
                        .materials()
                        .get(0)
                        .sheets())
                .hasSize(2);
    }

    @Test
    void refusesASheetThatLeavesNoWayForTheBitRoundThePart() {
        var job = SheetJob.sheet(1220, 600).pieces("A", 1210, 300, 1);

        assertThatThrownBy(() -> Routes.plan(job.stock(), job.cutList(), ROUTER))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("cut line 'A' (part A) is 1210.00 x 300.00 mm, and with bit and margin of 7.95 mm all round"
                        + " needs 1225.90 x 315.90 mm, but a sheet of 'plain board' is 1220.00 x 600.00 mm: 5.90 mm too"
                        + " short and 0.00 mm too narrow. Use a smaller bit or margin: 5.00 mm together would do. Make it"
                        + " smaller, keep fewer together, or buy a sheet of at least 1225.90 x 600.00 mm.")
                .extracting("field")
                .isEqualTo("/stock/sheets");
    }

    @Test
    void offersToTurnTheGrainWhereThatWouldDo() {
        var job = SheetJob.sheet(1220, 600).grain().pieces("A", 300, 1100, 1);

        assertThatThrownBy(() -> Routes.plan(job.stock(), job.cutList(), ROUTER))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageContaining("It would fit turned: let its grain run either way (\"anyGrain\" of \"cutting\"");
        var free = new CutList(job.lines(), List.of(), new Cutting(Set.of(), Set.of("A"), Set.of(), List.of()));
        assertThat(pieces(Routes.plan(job.stock(), free, ROUTER)).get(0).lie().quarters())
                .isEqualTo(1);
    }

    @Test
    void refusesMoreThanTheStockHolds() {
        var stock = stock(board("few", PLAIN, 1000, 500, 18, 2, true));
        var list = new CutList(List.of(line("A", Part.blank("top", PLAIN, 900, 400), 3)), List.of());

        assertThatThrownBy(() -> Routes.plan(stock, list, ROUTER))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageContaining("found no place")
                .hasMessageContaining("Have at least 1 more of 'few', or leave out its count.");
    }

    @Test
    void refusesBoardsThatNoDadoFits() {
        var stock = stock(board("thick", PLAIN, 1000, 500, 19, 2, true));
        var list = new CutList(List.of(line("A", Part.blank("top", PLAIN, 900, 400), 1)), List.of());

        assertThatThrownBy(() -> Routes.plan(stock, list, ROUTER))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageContaining("'thick' 19.00 mm");
    }

    @Test
    void cutsWhatItCanFromWhatIsAtHand() {
        var stock =
                stock(board("bought", PLAIN, 2440, 1220, 18, 0, true), board("offcut", PLAIN, 700, 500, 18, 1, false));
        var list = new CutList(List.of(line("A", Part.blank("shelf", PLAIN, 600, 400), 1)), List.of());

        assertThat(Routes.plan(stock, list, ROUTER).materials().get(0).sheets())
                .singleElement()
                .satisfies(sheet -> assertThat(sheet.from().name()).isEqualTo("offcut"));
    }

    @Test
    void keepsFrontsOfOneStripSideBySideInTheirOrder() {
        var list = new CutList(
                List.of(
                        line("A", Part.blank("left front", VENEERED, 500, 300), 1),
                        line("B", Part.blank("right front", VENEERED, 400, 300), 1),
                        line("C", Part.blank("side", VENEERED, 600, 450), 3)),
                List.of(),
                new Cutting(
                        Set.of(),
                        Set.of(),
                        Set.of(),
                        List.of(new Together(Kind.ONE_STRIP, List.of("B", "A"), Along.LENGTH, 0))));
        var plan = Routes.plan(stock(board("sheet", VENEERED, 2440, 1220, 18, 0, true)), list, ROUTER);

        var a = placed(plan, "A").get(0).outline().bounds();
        var b = placed(plan, "B").get(0).outline().bounds();
        assertThat(a.x0()).isCloseTo(b.x1() + 7.95, within(1e-3));
        assertThat(a.y0()).isCloseTo(b.y0(), within(1e-6));
    }

    /** The verifier would not let a strip pass that runs the other way. */
    @Test
    void keepsAStripInItsOrderWhenItIsCutFaceDown() {
        var hole = Hole.blind(Face.BENCH, 100, 50, 5, 10, "handle");
        var list = new CutList(
                List.of(
                        line("A", Part.blank("lower front", VENEERED, 500, 150).with(hole), 1),
                        line("B", Part.blank("upper front", VENEERED, 500, 300).with(hole), 1)),
                List.of(),
                new Cutting(
                        Set.of(),
                        Set.of("A", "B"),
                        Set.of(),
                        List.of(new Together(Kind.ONE_STRIP, List.of("A", "B"), Along.WIDTH, 0))));

        for (var board : List.of(
                board("wide", VENEERED, 520, 480, 18, 0, true), board("narrow", VENEERED, 480, 520, 18, 0, true))) {
            assertThat(pieces(Routes.plan(stock(board), list, ROUTER)))
                    .hasSize(2)
                    .allMatch(piece -> piece.lie().overturned());
        }
    }

    /** A saw gets both from a strip of 2 x 100 - 18 mm + its kerf. */
    @Test
    void routesStripsOfABevelRipSquareOneByOne() {
        var cleat = Part.blank("cleat", PLAIN, 1000, 100).with(new Bevel(Edge.Y1, Face.SHOW, 45, 18));
        var list = new CutList(List.of(line("A", cleat, 2)), List.of());
        var plan = Routes.plan(stock(board("sheet", PLAIN, 1100, 223.85, 18, 0, true)), list, ROUTER);

        assertThat(Routes.boards(plan)).isEqualTo(1);
        assertThat(pieces(plan))
                .allSatisfy(
                        piece -> assertThat(piece.outline().bounds().height()).isCloseTo(100, within(1e-6)));
    }

    /** Two right triangles of 400 x 300 fill a rectangle little larger than one of them. */
    @Test
    void pairsTrianglesHeadToTail() {
        var bracket = Part.blank("bracket", PLAIN, 400, 300)
                .with(new Contour(new Outline(List.of(new Vec2(0, 0), new Vec2(400, 0), new Vec2(0, 300))), "bracket"));
        var list = new CutList(List.of(line("A", bracket, 8)), List.of());
        var stock = stock(board("sheet", PLAIN, 900, 660, 18, 0, true));
        var plan = Routes.plan(stock, list, ROUTER);

        assertThat(Routes.boards(plan)).isEqualTo(1);
        assertThat(Routes.sawn(stock, list, ROUTER).materials().get(0).sheets()).hasSize(2);
        assertThat(pieces(plan).stream().map(piece -> piece.lie().quarters() / 2))
                .containsExactlyInAnyOrder(0, 0, 0, 0, 1, 1, 1, 1);
    }

    @Test
    void keepsTheGrainOfPairs() {
        var bracket = Part.blank("bracket", VENEERED, 400, 300)
                .with(new Contour(new Outline(List.of(new Vec2(0, 0), new Vec2(400, 0), new Vec2(0, 300))), "bracket"));
        var list = new CutList(List.of(line("A", bracket, 7)), List.of());
        var plan = Routes.plan(stock(board("sheet", VENEERED, 900, 700, 18, 0, true)), list, ROUTER);

        assertThat(pieces(plan)).allMatch(piece -> piece.lie().quarters() % 2 == 0);
    }

    @Test
    void leavesOneLargeRest() {
        var job = SheetJob.sheet(2440, 1220).pieces("A", 600, 400, 3).pieces("B", 300, 150, 4);
        var pieces = pieces(Routes.plan(job.stock(), job.cutList(), ROUTER));

        double x = pieces.stream()
                .mapToDouble(p -> p.outline().bounds().x1())
                .max()
                .orElseThrow();
        double y = pieces.stream()
                .mapToDouble(p -> p.outline().bounds().y1())
                .max()
                .orElseThrow();
        double rest = Math.max((2440 - x) * 1220, (1220 - y) * 2440);
        assertThat(rest).isGreaterThan(0.9 * (2440 * 1220 - 3 * 608 * 408 - 4 * 308 * 158));
    }

    @Test
    void stopsWhenItIsGivenUp() {
        var job = SheetJob.random(1, 60);

        assertThatThrownBy(() -> RouterPlanner.plan(job.stock(), job.cutList(), ROUTER, Effort.seconds(60), () -> true))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void refusesTwoLinesOfOneLabel() {
        var line = line("A", Part.blank("shelf", PLAIN, 600, 400), 1);
        var list = new CutList(List.of(line, line), List.of());

        assertThatThrownBy(() -> Routes.plan(stock(), list, ROUTER)).hasMessageContaining("labelled 'A'");
    }

    private static List<RoutedPiece> pieces(RouterPlan plan) {
        return plan.materials().stream()
                .flatMap(material -> material.sheets().stream())
                .flatMap(sheet -> sheet.pieces().stream())
                .toList();
    }

    private static List<RoutedPiece> placed(RouterPlan plan, String label) {
        return pieces(plan).stream()
                .filter(piece -> piece.label().equals(label))
                .toList();
    }

    static CutLine line(String label, Part part, int count) {
        return new CutLine(label, part, Collections.nCopies(count, part.name()), List.of());
    }

    static Stock stock(StockSheet... sheets) {
        return new Stock(List.of(sheets), new Saw(3.2, 10), new Keep(300, 100));
    }

    /** @param count 0 for as many as it takes */
    static StockSheet board(
            String name, Material material, double length, double width, double thickness, int count, boolean bought) {
        return new StockSheet(
                name,
                material,
                length,
                width,
                thickness,
                count == 0 ? OptionalInt.empty() : OptionalInt.of(count),
                Optional.empty(),
                bought ? StockSheet.Source.BOUGHT : StockSheet.Source.AT_HAND);
    }
}
