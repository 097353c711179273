package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Saw.First;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.StockSheet.Source;
import org.standwright.design.kit.Trim;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.sheet.Proof.Goal;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PieceType.Ways;
import org.standwright.unit.Money;

class WorkTest {
    private static final Material WOOD = new Material("veneered board", 18, 650, Grain.ALONG_LENGTH);
    private static final Saw FREE = new Saw(3, 0);
    private static final int MM = 3200;

    @Test
    void tellsTheSawsLimitsInUnitsWithTheKerf() {
        var saw = new Saw(
                3,
                Trim.all(5),
                OptionalInt.of(3),
                First.RIP,
                OptionalDouble.of(1300),
                OptionalDouble.of(700),
                150,
                Optional.of(new BreakDown(2, 5)));

        var rules = work(saw, List.of(board(2440, 1220))).job().rules();

        // a break-down cut takes 2 + 2 x 5 mm, of which the kerf of 3 mm is there already
        assertThat(rules).isEqualTo(new CutRules(3 * MM, 3, First.RIP, 1303 * MM, 703 * MM, 9 * MM));
        assertThat(work(FREE, List.of(board(2440, 1220))).job().rules()).isEqualTo(CutRules.free(3 * MM));
    }

    @Test
    void neverTakesLessForABreakDownCutThanForASawCut() {
        var saw = limited(First.EITHER, 700, 3000, Optional.of(new BreakDown(1, 0)));

        assertThat(work(saw, List.of(board(2440, 1220))).job().rules().breakDown())
                .isZero();
    }

    @Test
    void countsSheetsOfOneSizeMoneyWhereAllPricesAreKnownAndElseArea() {
        var small = priced(1525, 1525, "81.50 EUR");
        var large = priced(2500, 1250, "94.00 EUR");

        assertThat(work(FREE, List.of(large)).goal()).isEqualTo(Goal.SHEETS);
        assertThat(costs(large, small)).containsExactly(94_000L, 81_500L);
        assertThat(costs(large, priced(1525, 1525, "81.50 USD"))).containsExactly(3_125_000L, 2_325_625L);
        assertThat(costs(large, board(1525, 1525))).containsExactly(3_125_000L, 2_325_625L);
        assertThat(costs(large, atHand(900, 400, 18))).containsExactly(1L, 0L);
    }

    @Test
    void limitsWhatThereIsAFewOf() {
        var kinds = work(FREE, List.of(board(2440, 1220), atHand(900, 400, 18)))
                .job()
                .kinds();

        assertThat(kinds).extracting(BoardKind::count).containsExactly(BoardKind.UNLIMITED, 1);
        assertThat(kinds).extracting(BoardKind::length).containsExactly(2443 * MM, 903 * MM);
    }

    @Test
    void turnsOnlyWhatHasFreeGrainAndLetsEverythingMate() {
        var lines = List.of(line("A", 600, 300, 1), line("B", 500, 200, 1));
        var cutting = new Cutting(Set.of(), Set.of("B"), Set.of(), List.of());

        var types =
                Work.of(stock(FREE, board(2440, 1220)), lines, cutting).job().types();

        assertThat(types).extracting(type -> type.ways()).containsExactly(Ways.STRAIGHT, Ways.EITHER);
        assertThat(types).extracting(type -> type.mating()).containsExactly(true, true);
    }

    @Test
    void countsEqualBlocksAndLeavesTheOtherPiecesByThemselves() {
        var lines = List.of(line("A", 600, 100, 5), line("B", 600, 150, 2));
        var pair = new Together(Together.Kind.ONE_STRIP, List.of("A", "B"), Together.Along.WIDTH, 0);
        var cutting = new Cutting(Set.of(), Set.of(), Set.of(), List.of(pair, pair));

        var work = Work.of(stock(FREE, board(2440, 1220)), lines, cutting);

        assertThat(work.blocks()).extracting(block -> block.label()).containsExactly("A + B", "A");
        assertThat(work.job().types()).extracting(type -> type.count()).containsExactly(2, 3);
        assertThat(work.job().types().get(0).width()).isEqualTo((100 + 150 + 2 * 3) * MM);
    }

    @Test
    void namesTheNearestBoardAndTheSizeThatWouldDo() {
        var stock = stock(FREE, board(1525, 1525), board(2440, 1220));

        var refusal = catchThrowableOfType(
                PartTooLargeException.class, () -> Work.of(stock, List.of(line("A", 2500, 600, 1)), Cutting.PLAIN));

        assertThat(refusal.field()).isEqualTo("/stock/sheets");
        assertThat(refusal.excessLength()).isEqualTo(60);
        assertThat(refusal)
                .hasMessageContaining("a sheet of '2440 x 1220', 2440.00 x 1220.00 mm")
                .hasMessageEndingWith("buy a sheet of at least 2500.00 x 1220.00 mm.");
    }

    @Test
    void saysWhereOnlyTheGrainStandsAgainstIt() {
        assertThatThrownBy(() -> plan(FREE, line("A", 1000, 1300, 1), board(2440, 1220)))
                .isInstanceOf(PartTooLargeException.class)
                .hasMessageEndingWith(
                        "It would fit turned: let its grain run either way (\"anyGrain\" of \"cutting\": part A).");
    }

    @Test
    void refusesAStripThatIsLargerThanAnySheet() {
        var pair = new Together(Together.Kind.ONE_STRIP, List.of("A", "A"), Together.Along.WIDTH, 0);
        var cutting = new Cutting(Set.of(), Set.of(), Set.of(), List.of(pair));
        var stock = stock(FREE, board(2440, 1220));

        assertThatThrownBy(() -> Work.of(stock, List.of(line("A", 600, 700, 2)), cutting))
                .hasMessage("'A + A' cut as one block (part A, 600.00 x 1403.00 mm) is larger than '2440 x 1220',"
                        + " 2440.00 x 1220.00 mm, after trimming. Keep fewer together, or buy a sheet of at least"
                        + " 2440.00 x 1403.00 mm. It would fit turned: let its grain run either way"
                        + " (\"anyGrain\" of \"cutting\": part A).");
    }

    @Test
    void refusesAPartWhereEveryLargeBoardIsTooThickOrTooThin() {
        var cutting = new Cutting(Set.of(), Set.of(), Set.of("A"), List.of());
        var stock = stock(FREE, atHand(900, 400, 18), atHand(2000, 1000, 18.4));

        assertThatThrownBy(() -> Work.of(stock, List.of(line("A", 1200, 300, 1)), cutting))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageContaining("counts on a board of 17.50 to 18.00 mm, and no board that is large enough is")
                .hasMessageContaining("'at hand 2000 x 1000' 18.40 mm");
    }

    @Test
    void saysHowManyMoreBoardsThePiecesNeedAtLeast() {
        var few = new StockSheet("birch", WOOD, 1000, 500, 18, OptionalInt.of(2), Optional.empty(), Source.BOUGHT);

        assertThatThrownBy(() -> plan(new Saw(0, 0), line("A", 800, 500, 4), few))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("the boards of 'veneered board' that are there have 1.00 m² with their kerfs, but the"
                        + " pieces that can only come from them need 1.60 m². Have at least 2 more of 'birch', or leave"
                        + " out its count.");
    }

    @Test
    void countsOnlyTheBoardsThatAPieceCanComeFrom() {
        var few = new StockSheet("birch", WOOD, 1000, 500, 18, OptionalInt.of(1), Optional.empty(), Source.BOUGHT);

        assertThatThrownBy(() -> plan(FREE, line("A", 900, 400, 2), few, board(500, 500)))
                .hasMessageContaining("at least 1 more of 'birch'");
    }

    @Test
    void refusesACutThatIsTooLongWhereThereIsNoSawForIt() {
        var saw = limited(First.EITHER, 1200, 1000, Optional.empty());

        assertThatThrownBy(() -> plan(saw, line("A", 600, 300, 1), board(2440, 1220)))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("cut line 'A' (part A, 600.00 x 300.00 mm) cannot be sawn from any board by a saw that cuts"
                        + " 1200.00 mm in a rip and 1000.00 mm in a crosscut, without a break-down saw. Add a"
                        + " break-down saw: \"breakDown\": {}. Allow longer cuts or either direction first, or stock"
                        + " boards that the saw can divide.");
        assertThat(plan(
                                limited(First.EITHER, 1200, 1000, Optional.of(new BreakDown(2.2, 5))),
                                line("A", 600, 300, 1),
                                board(2440, 1220))
                        .blocks())
                .hasSize(1);
    }

    /** The table takes a crosscut of the whole board, but not the rip of what comes off. */
    @Test
    void refusesAPieceThatIsTooLongToBeRipped() {
        var saw = limited(First.EITHER, 1200, 1220, Optional.empty());

        assertThatThrownBy(() -> plan(saw, line("A", 2000, 600, 1), board(2440, 1220)))
                .hasMessageContaining("cannot be sawn from any board");
        assertThat(plan(saw, line("A", 1100, 600, 1), board(2440, 1220)).blocks())
                .hasSize(1);
        assertThat(plan(saw, line("A", 2000, 1220, 1), board(2440, 1220)).blocks())
                .hasSize(1);
    }

    @Test
    void refusesMorePiecesThanAPlanTakes() {
        assertThatThrownBy(() -> plan(FREE, line("A", 10, 10, 100_000), board(2440, 1220)))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("the cut list has 100000 pieces of 'veneered board', but a plan takes 20000 at most."
                        + " Plan them in several jobs.");
    }

    @Test
    void refusesSizesThatNoBoardHas() {
        assertThatThrownBy(() -> plan(FREE, line("A", 1e9, 10, 1), board(2440, 1220)))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageContaining("no board is longer than 100000.0 mm");
        assertThatThrownBy(() -> plan(FREE, line("A", 10, 10, 1), board(1e12, 1220)))
                .isInstanceOf(ImpossiblePlanException.class);
        assertThatThrownBy(() -> plan(new Saw(1e9, 0), line("A", 10, 10, 1), board(2440, 1220)))
                .isInstanceOf(ImpossiblePlanException.class);
    }

    @Test
    void refusesAMaterialThatIsNotInStock() {
        assertThatThrownBy(() -> plan(FREE, line("A", 10, 10, 1)))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageStartingWith("stock holds no sheet of 'veneered board'");
    }

    private static List<Long> costs(StockSheet... sheets) {
        return work(FREE, List.of(sheets)).job().kinds().stream()
                .map(BoardKind::cost)
                .toList();
    }

    private static Work work(Saw saw, List<StockSheet> sheets) {
        return plan(saw, line("A", 600, 300, 1), sheets.toArray(StockSheet[]::new));
    }

    private static Work plan(Saw saw, CutLine line, StockSheet... sheets) {
        return Work.of(stock(saw, sheets), List.of(line), Cutting.PLAIN);
    }

    private static Stock stock(Saw saw, StockSheet... sheets) {
        return new Stock(List.of(sheets), saw, Keep.USUAL);
    }

    private static Saw limited(First first, double rip, double crosscut, Optional<BreakDown> breakDown) {
        return new Saw(
                3,
                Trim.all(0),
                OptionalInt.empty(),
                first,
                OptionalDouble.of(rip),
                OptionalDouble.of(crosscut),
                0,
                breakDown);
    }

    private static CutLine line(String label, double length, double width, int count) {
        return SheetJob.line(WOOD, label, length, width, count);
    }

    private static StockSheet board(double length, double width) {
        return sheet(length, width, 18, Optional.empty(), Source.BOUGHT);
    }

    private static StockSheet priced(double length, double width, String price) {
        return sheet(length, width, 18, Optional.of(Money.parse(price)), Source.BOUGHT);
    }

    private static StockSheet atHand(double length, double width, double thickness) {
        return sheet(length, width, thickness, Optional.empty(), Source.AT_HAND);
    }

    private static StockSheet sheet(
            double length, double width, double thickness, Optional<Money> price, Source source) {
        boolean atHand = source == Source.AT_HAND;
        return new StockSheet(
                (atHand ? "at hand " : "") + Math.round(length) + " x " + Math.round(width),
                WOOD,
                length,
                width,
                thickness,
                atHand ? OptionalInt.of(1) : OptionalInt.empty(),
                price,
                source);
    }
}
