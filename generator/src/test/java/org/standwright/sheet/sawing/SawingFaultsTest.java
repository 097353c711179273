package org.standwright.sheet.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Trim;
import org.standwright.part.Edge;
import org.standwright.part.Grain;
import org.standwright.sheet.Cut;
import org.standwright.sheet.Cut.Purpose;
import org.standwright.sheet.Cut.Tool;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;

/** Breaks sound plans in one place each: the verifier sees it. */
class SawingFaultsTest {
    private static final Saw PLAIN = new Saw(3, 0);

    /** Crosscuts to 700 mm, a hand-held saw beyond, everything trimmed. */
    private static final Saw LIMITED = new Saw(
            3,
            Trim.all(10),
            OptionalInt.empty(),
            Saw.First.EITHER,
            OptionalDouble.empty(),
            OptionalDouble.of(700),
            0,
            Optional.of(new BreakDown(2, 5)));

    private static Saw staged(int stages, Saw.First first) {
        return new Saw(
                3,
                Trim.all(0),
                OptionalInt.of(stages),
                first,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                Optional.empty());
    }

    /** Two halves by hand, each ripped and recut. */
    private static Shop limited() {
        var shop = new Shop(LIMITED);
        return shop.board(shop.crosscut(
                shop.rip(shop.piece("A", 1000, 600), shop.piece("B", 1000, 500)),
                shop.rip(shop.piece("C", 800, 500), shop.piece("D", 800, 600))));
    }

    @Test
    void findsNoFaultWithSoundPlans() {
        assertThat(limited().faults()).isEmpty();
    }

    @Test
    void seesACutThatTheSawDoesNotReach() {
        assertThat(broken(limited(), Tool.BREAK_DOWN_SAW, Purpose.DIVIDE, cut -> changed(cut, Tool.SAW, cut.purpose())))
                .anyMatch(fault -> fault.contains("but the saw reaches 700.00 mm"))
                .anyMatch(fault -> fault.contains("but the blade 9600"));
    }

    @Test
    void seesAHandHeldSawThatIsNotThere() {
        var shop = new Shop(PLAIN);
        shop.board(shop.rip(shop.piece("A", 500, 300), shop.piece("B", 500, 200)));

        assertThat(broken(shop, Tool.SAW, Purpose.DIVIDE, cut -> changed(cut, Tool.BREAK_DOWN_SAW, cut.purpose())))
                .singleElement()
                .asString()
                .contains("there is none");
    }

    @Test
    void seesAFenceSettingThatIsOneUnitOffAndAWrongEdge() {
        for (var purpose : Purpose.values()) {
            assertThat(broken(limited(), Tool.SAW, purpose, cut -> withFence(cut, cut.reference(), cut.setting() + 1)))
                    .anyMatch(fault -> fault.contains("from its reference edge"));
        }
        assertThat(broken(limited(), Tool.SAW, Purpose.DIVIDE, cut -> withFence(cut, Edge.X0, cut.setting())))
                .anyMatch(fault -> fault.contains("does not run along its reference edge"));
    }

    @Test
    void seesARoughEdgeAgainstTheFence() {
        // the recut's near edge is the one that it takes off
        assertThat(broken(
                        limited(),
                        Tool.SAW,
                        Purpose.RECUT,
                        cut -> withFence(cut, cut.reference() == Edge.X1 ? Edge.X0 : Edge.X1, 2 * 3200)))
                .anyMatch(fault -> fault.contains("rough edge for its reference"));
    }

    @Test
    void seesACutThatIsNotForWhatItSays() {
        assertThat(broken(limited(), Tool.SAW, Purpose.TRIM, cut -> changed(cut, Tool.SAW, Purpose.RECUT)))
                .anyMatch(fault -> fault.contains("recuts a factory edge"));
        assertThat(broken(limited(), Tool.SAW, Purpose.RECUT, cut -> changed(cut, Tool.SAW, Purpose.TRIM)))
                .anyMatch(fault -> fault.contains("trims what is no factory edge"));
        assertThat(broken(limited(), Tool.SAW, Purpose.DIVIDE, cut -> changed(cut, Tool.SAW, Purpose.TRIM)))
                .anyMatch(fault -> fault.contains("takes a piece off with the edge"));
    }

    @Test
    void seesAnAllowanceThatIsTooSmall() {
        var greedy = new Saw(
                LIMITED.kerf(),
                LIMITED.trim(),
                LIMITED.stages(),
                LIMITED.first(),
                LIMITED.longestRip(),
                LIMITED.longestCrosscut(),
                0,
                Optional.of(new BreakDown(2, 6)));
        var plan = limited().plan();
        var asked = new Shop(greedy);
        asked.board(asked.crosscut(
                asked.rip(asked.piece("A", 1000, 600), asked.piece("B", 1000, 500)),
                asked.rip(asked.piece("C", 800, 500), asked.piece("D", 800, 600))));

        assertThat(asked.faults()).isEmpty();
        assertThat(asked.faults(plan)).anyMatch(fault -> fault.contains("takes off less than the allowance"));
    }

    @Test
    void seesCutsOfTwoBoardsWithOneNumberAndAGap() {
        var shop = new Shop(PLAIN);
        shop.board(shop.rip(shop.piece("A", 500, 300), shop.piece("B", 500, 200)));
        shop.board(shop.rip(shop.piece("C", 500, 310), shop.piece("D", 500, 200)));

        assertThat(shop.faults()).isEmpty();
        assertThat(faults(shop, cut -> numbered(cut, 1))).anyMatch(fault -> fault.contains("not numbered in order"));
        assertThat(faults(shop, cut -> numbered(cut, 2 * cut.number())))
                .anyMatch(fault -> fault.contains("not numbered from 1 to 2"));
    }

    @Test
    void seesWhatWaitsCutTooEarly() {
        var shop = new Shop(PLAIN);
        shop.board(shop.rip(
                shop.crosscut(shop.piece("A", 600, 200), shop.piece("B", 397, 200)),
                shop.crosscut(shop.piece("C", 500, 100), shop.piece("D", 497, 100))));
        var plan = shop.plan();
        shop.later = Set.of("A", "B");

        assertThat(shop.faults()).isEmpty();
        assertThat(shop.faults(plan)).anyMatch(fault -> fault.contains("comes after cuts that have to wait"));
    }

    @Test
    void seesOneStageTooMany() {
        for (int stages : new int[] {2, 3}) {
            var shop = new Shop(staged(stages, Saw.First.EITHER));
            shop.board(shop.rip(
                    shop.piece("A", 1000, 200),
                    shop.crosscut(
                            shop.piece("B", 500, 303),
                            shop.rip(shop.piece("C", 497, 150), shop.piece("D", 497, 150)))));
            assertThat(shop.faults().isEmpty()).isEqualTo(stages == 3);
        }
    }

    @Test
    void allowsOneStageMoreThatTrimsASinglePiece() {
        var shop = new Shop(staged(2, Saw.First.EITHER));
        shop.board(shop.rip(
                shop.piece("A", 1000, 200),
                shop.crosscut(shop.piece("B", 500, 303), shop.rip(shop.piece("C", 497, 150), shop.rest(497, 150)))));

        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void countsAStripThatStaysTogetherAsOnePiece() {
        var shop = new Shop(staged(2, Saw.First.RIP));
        shop.board(shop.rip(
                shop.piece("A", 603, 200),
                shop.crosscut(shop.row(Block.Parting.ON_SHEET, true, 300, 100, "C", "D"), shop.piece("B", 500, 603))));

        assertThat(shop.faults()).anyMatch(fault -> fault.contains("is stage 3 of 2"));
        shop.together = List.of(new Together(Kind.ONE_STRIP, List.of("C", "D"), Along.LENGTH, 0));
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void seesAFirstCutInTheOtherDirectionUnlessAPieceSpansTheBoard() {
        var crosscut = new Shop(staged(3, Saw.First.RIP));
        crosscut.board(crosscut.crosscut(
                crosscut.rip(crosscut.piece("A", 500, 200), crosscut.piece("B", 500, 297)),
                crosscut.rip(crosscut.piece("C", 400, 297), crosscut.piece("D", 400, 200))));
        var spanned = new Shop(staged(3, Saw.First.RIP));
        spanned.board(spanned.crosscut(
                spanned.rip(spanned.piece("A", 500, 200), spanned.piece("B", 500, 297)), spanned.piece("C", 400, 500)));

        assertThat(crosscut.faults()).singleElement().asString().contains("divides the board first");
        assertThat(spanned.faults()).isEmpty();
    }

    @Test
    void seesPiecesThatDoNotStayTogether() {
        var shop = new Shop(PLAIN);
        shop.board(shop.rip(
                shop.crosscut(shop.piece("A", 300, 200), shop.piece("B", 297, 200)), shop.piece("C", 600, 150)));
        shop.board(shop.piece("D", 100, 100));

        assertThat(together(shop, Kind.ONE_STRIP, Along.LENGTH, "A", "B")).isEmpty();
        assertThat(together(shop, Kind.ONE_STRIP, Along.LENGTH, "B", "A")).hasSize(1);
        assertThat(together(shop, Kind.ONE_STRIP, Along.WIDTH, "A", "C")).isEmpty();
        assertThat(together(shop, Kind.ONE_STRIP, Along.LENGTH, "A", "C")).hasSize(1);
        assertThat(together(shop, Kind.ONE_SHEET, Along.LENGTH, "C", "A", "B")).isEmpty();
        assertThat(together(shop, Kind.ONE_SHEET, Along.LENGTH, "C", "D")).hasSize(1);
        assertThat(together(shop, Kind.ONE_BLANK, Along.LENGTH, "A", "B"))
                .containsExactly("board: pieces [A, B] do not come from one blank.");
    }

    @Test
    void sharesEqualPiecesOutAmongGroups() {
        var shop = new Shop(PLAIN);
        shop.board(shop.crosscut(shop.piece("A", 300, 200), shop.piece("A", 300, 200), shop.piece("A", 300, 200)));
        var pair = new Together(Kind.ONE_STRIP, List.of("A", "A"), Along.LENGTH, 0);
        var trio = new Together(Kind.ONE_SHEET, List.of("A", "A", "A"), Along.LENGTH, 0);

        shop.together = List.of(pair);
        assertThat(shop.faults()).isEmpty();
        shop.together = List.of(pair, pair);
        assertThat(shop.faults()).hasSize(1);
        shop.together = List.of(trio);
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void seesABlankWithoutItsAllowanceOrItsKerf() {
        var shop = new Shop(PLAIN);
        shop.board(shop.rip(shop.piece("C", 123, 500), shop.row(Block.Parting.LATER, false, 60, 40, "A", "B")));

        assertThat(together(shop, Kind.ONE_BLANK, Along.LENGTH, "B", "A")).isEmpty();
        shop.together = List.of(new Together(Kind.ONE_BLANK, List.of("A", "B"), Along.LENGTH, 1));
        assertThat(shop.faults()).hasSize(1);
        shop.together = List.of();
        assertThat(shop.faults(shop.plan(pieces(shop, SawingFaultsTest::tight))))
                .containsExactly("Pieces 'A' and 'B' of blank 'A + B' leave no kerf.");
    }

    /** The second piece of a blank one unit nearer to the first. */
    private static PlacedPiece tight(PlacedPiece piece) {
        return piece.holds().isEmpty()
                ? piece
                : new PlacedPiece(
                        piece.label(),
                        piece.area(),
                        piece.turned(),
                        piece.parting(),
                        List.of(piece.holds().get(0), piece.holds().get(1).moved(-1, 0)));
    }

    @Test
    void letsAPieceComeFromABoardThatIsThickEnoughAndNotTooThick() {
        assertThat(pieceOf(18).faults()).isEmpty();
        assertThat(pieceOf(17.6).faults()).isEmpty();
        assertThat(pieceOf(17.5).faults()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {17.4, 18.1})
    void seesAPieceOnABoardThatIsTooThinOrTooThick(double thickness) {
        assertThat(pieceOf(thickness).faults())
                .singleElement()
                .asString()
                .contains("needs a board of 17.50 to 18.00 mm", "is " + thickness + " mm thick");
    }

    private static Shop pieceOf(double thickness) {
        var shop = new Shop(PLAIN);
        return shop.board(shop.piece("A", 300, 200), thickness, OptionalInt.empty());
    }

    @Test
    void seesMoreBoardsThanThereAre() {
        var shop = new Shop(PLAIN);
        shop.board(shop.piece("A", 300, 200), 18, OptionalInt.of(1)).again(shop.piece("A", 300, 200));

        assertThat(shop.faults()).containsExactly("The plan takes 2 of sheet 'board 1', but the stock holds 1.");
    }

    @Test
    void seesAPieceAcrossTheGrainUnlessItIsFree() {
        var shop = new Shop(PLAIN, Grain.ALONG_LENGTH);
        shop.board(shop.turned("A", 300, 200));

        assertThat(shop.faults()).containsExactly("Piece 'A' lies across the grain.");
        shop.free = Set.of("A");
        assertThat(shop.faults()).isEmpty();
    }

    private static List<String> together(Shop shop, Kind kind, Along along, String... labels) {
        shop.together = List.of(new Together(kind, List.of(labels), along, 0));
        return shop.faults();
    }

    /** What is wrong once the first cut of this tool and purpose is another. */
    private static List<String> broken(Shop shop, Tool tool, Purpose purpose, UnaryOperator<Cut> change) {
        int first = shop.plan().sheets().get(0).cuts().stream()
                .filter(cut -> cut.tool() == tool && cut.purpose() == purpose)
                .findFirst()
                .orElseThrow()
                .number();
        return faults(shop, cut -> cut.number() == first ? change.apply(cut) : cut);
    }

    private static List<String> faults(Shop shop, UnaryOperator<Cut> change) {
        return shop.faults(shop.plan(shop.plan().sheets().stream()
                .map(sheet -> new PlannedSheet(
                        sheet.from(),
                        sheet.pieces(),
                        sheet.cuts().stream().map(change).toList(),
                        sheet.offcuts()))
                .toList()));
    }

    private static List<PlannedSheet> pieces(Shop shop, UnaryOperator<PlacedPiece> change) {
        return shop.plan().sheets().stream()
                .map(sheet -> new PlannedSheet(
                        sheet.from(), sheet.pieces().stream().map(change).toList(), sheet.cuts(), sheet.offcuts()))
                .toList();
    }

    private static Cut changed(Cut cut, Tool tool, Purpose purpose) {
        return new Cut(cut.number(), cut.direction(), cut.kerf(), tool, purpose, cut.reference(), cut.setting());
    }

    private static Cut withFence(Cut cut, Edge reference, int setting) {
        return new Cut(cut.number(), cut.direction(), cut.kerf(), cut.tool(), cut.purpose(), reference, setting);
    }

    private static Cut numbered(Cut cut, int number) {
        return new Cut(number, cut.direction(), cut.kerf(), cut.tool(), cut.purpose(), cut.reference(), cut.setting());
    }
}
