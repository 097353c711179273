package org.standwright.router;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
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
import org.standwright.part.Contour;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.router.RouterPlan.MaterialSheets;
import org.standwright.router.plan.Routers;
import org.standwright.sheet.Stock;

/** A sound plan, and what is said of it when one thing is wrong. Spacing 8 mm; A and B are a strip, C is cut face down. */
class RouterVerifierTest {
    private static final Router ROUTER = Routers.of(6, 2);
    private static final Material VENEER = new Material("veneer", 18, 650, Grain.ALONG_LENGTH);
    private static final CutLine A = line("A", Part.blank("left front", VENEER, 400, 300), 1);
    private static final CutLine B = line("B", Part.blank("right front", VENEER, 300, 300), 1);
    private static final CutLine C =
            line("C", Part.blank("side", VENEER, 500, 300).with(Hole.blind(Face.BENCH, 100, 100, 5, 10, "dowel")), 1);
    private static final CutLine D = line(
            "D",
            Part.blank("bracket", VENEER, 200, 200)
                    .with(new Contour(
                            new Outline(List.of(new Vec2(0, 0), new Vec2(200, 0), new Vec2(0, 200))), "bracket")),
            2);
    private static final StockSheet BOARD = board("board", VENEER, 18);
    private static final Stock STOCK = new Stock(List.of(BOARD), new Saw(3, 10), new Keep(300, 100), 0.2);

    private static final List<RoutedPiece> SOUND = List.of(
            at(A, false, 0, 8, 8),
            at(B, false, 0, 416, 8),
            at(C, true, 0, 8, 616),
            // 12 / sqrt 2 = 8.485 mm between their long sides; their boxes overlap
            at(D, false, 0, 600, 400),
            at(D, false, 2, 806, 606));

    @Test
    void findsNoFaultWithASoundPlan() {
        assertThat(faults(SOUND)).isEmpty();
    }

    @Test
    void missesAPart() {
        assertThat(faults(SOUND.subList(0, 4))).containsExactly("Line 'D' has 1 missing.");
    }

    @Test
    void countsAPartTooMany() {
        assertThat(faults(with(at(D, false, 0, 600, 1000)))).containsExactly("Line 'D' has 1 too many.");
    }

    @Test
    void tellsAForeignPart() {
        assertThat(faults(with(at(line("X", A.part(), 1), false, 0, 600, 900))))
                .contains("Piece 'X' does not belong on a sheet of 'veneer'.");
    }

    @Test
    void tellsAnotherPartOfTheSameLabel() {
        assertThat(faults(changed(2, piece -> new RoutedPiece("C", B.part(), piece.lie()))))
                .contains("Piece 'C' is not the part of its line.");
    }

    @Test
    void tellsAPartTooNearTheEdge() {
        assertThat(faults(changed(2, piece -> moved(piece, -0.01, 0))))
                .containsExactly("veneer 1: piece 'C' is 7.990 mm from the edge, less than 8.000 mm.");
    }

    @Test
    void tellsAPartBeyondTheEdge() {
        assertThat(faults(changed(2, piece -> moved(piece, 0, 900)))).anyMatch(fault -> fault.contains("'C' is -"));
    }

    @Test
    void tellsOutlinesTooNearEachOther() {
        assertThat(faults(changed(4, piece -> moved(piece, -1, 0))))
                .singleElement()
                .asString()
                .startsWith("veneer 1: pieces 'D' and 'D' are 7.778 mm apart");
    }

    @Test
    void tellsOutlinesOneOnTheOther() {
        assertThat(faults(changed(4, piece -> at(D, false, 0, 500, 100))))
                .anyMatch(fault -> fault.contains("'B' and 'D' are 0.000 mm apart"));
    }

    @Test
    void tellsAPartAcrossTheGrain() {
        assertThat(faults(changed(2, piece -> at(C, true, 1, 308, 616))))
                .containsExactly("Piece 'C' lies across the grain.");
    }

    @Test
    void tellsAPartWithTheWrongFaceUp() {
        assertThat(faults(changed(2, piece -> at(C, false, 0, 8, 616))))
                .containsExactly("Piece 'C' has the wrong face up.");
    }

    @Test
    void tellsABoardOfAnotherThickness() {
        var thick = board("thick", VENEER, 19);
        var stock = new Stock(List.of(BOARD, thick), new Saw(3, 10), new Keep(300, 100), 0.2);

        assertThat(faults(stock, list(Kind.ONE_STRIP), List.of(new RoutedSheet(thick, SOUND))))
                .containsExactly("veneer 1: 'thick' is 19.00 mm thick, but its parts count on 17.70 to 18.20 mm.");
    }

    @Test
    void tellsABoardThatIsNotThere() {
        var other = board("other", VENEER, 18);

        assertThat(faults(STOCK, list(Kind.ONE_STRIP), List.of(new RoutedSheet(other, SOUND))))
                .containsExactly("The plan takes 1 of sheet 'other', but it is not in stock.");
    }

    @Test
    void tellsBoardsBeyondTheirCount() {
        var two = List.of(
                new RoutedSheet(BOARD, SOUND.subList(0, 3)),
                new RoutedSheet(BOARD, SOUND.subList(3, 4)),
                new RoutedSheet(BOARD, SOUND.subList(4, 5)));

        assertThat(faults(STOCK, list(Kind.ONE_STRIP), two))
                .containsExactly("The plan takes 3 of sheet 'board', but the stock holds 2.");
    }

    @Test
    void tellsABoardOfAnotherMaterial() {
        var other = board("other", new Material("oak", 18, 650, Grain.ALONG_LENGTH), 18);
        var stock = new Stock(List.of(other), new Saw(3, 10), new Keep(300, 100), 0.2);

        assertThat(faults(stock, list(Kind.ONE_STRIP), List.of(new RoutedSheet(other, SOUND))))
                .contains("Piece 'A' does not belong on a sheet of 'veneer'.");
    }

    @Test
    void tellsAnEmptyBoard() {
        var sheets = List.of(new RoutedSheet(BOARD, SOUND), new RoutedSheet(BOARD, List.of()));

        assertThat(faults(STOCK, list(Kind.ONE_STRIP), sheets)).containsExactly("veneer 2: nothing is cut from it.");
    }

    @Test
    void tellsAStripTooFarApart() {
        assertThat(faults(changed(1, piece -> moved(piece, 1, 0))))
                .containsExactly("veneer: pieces [A, B] do not lie side by side, 8.000 mm apart.");
    }

    @Test
    void tellsAStripOutOfLine() {
        assertThat(faults(changed(1, piece -> moved(piece, 0, -0.1))))
                .contains("veneer: pieces [A, B] do not lie side by side, 8.000 mm apart.");
    }

    @Test
    void tellsAStripInTheWrongOrder() {
        var swapped = new ArrayList<>(SOUND);
        swapped.set(0, at(A, false, 0, 316, 8));
        swapped.set(1, at(B, false, 0, 8, 8));

        assertThat(faults(swapped)).hasSize(1);
    }

    @Test
    void readsAStripFromItsOtherEndWhenItIsTurnedRound() {
        var turned = new ArrayList<>(SOUND);
        turned.set(0, at(A, false, 2, 716, 308));
        turned.set(1, at(B, false, 2, 308, 308));

        assertThat(faults(turned)).isEmpty();
    }

    @Test
    void tellsAStripOnTwoBoards() {
        var sheets = List.of(new RoutedSheet(BOARD, SOUND.subList(1, 5)), new RoutedSheet(BOARD, SOUND.subList(0, 1)));

        assertThat(faults(STOCK, list(Kind.ONE_STRIP), sheets)).hasSize(1);
        assertThat(faults(STOCK, list(Kind.ONE_SHEET), sheets))
                .containsExactly("veneer: pieces [A, B] do not lie on one sheet.");
    }

    @Test
    void letsPiecesOfOneSheetLieAnywhereOnIt() {
        var moved = changed(1, piece -> moved(piece, 300, 0));

        assertThat(faults(STOCK, list(Kind.ONE_SHEET), List.of(new RoutedSheet(BOARD, moved))))
                .isEmpty();
    }

    @Test
    void tellsAPlanForAnotherRouter() {
        var plan = new RouterPlan(
                Routers.of(5, 2), List.of(new MaterialSheets(VENEER, List.of(new RoutedSheet(BOARD, SOUND)))));

        assertThat(RouterVerifier.faults(STOCK, list(Kind.ONE_STRIP), ROUTER, plan))
                .containsExactly("The plan is for another router.");
    }

    @Test
    void tellsAMaterialPlannedTwice() {
        var sheets = new MaterialSheets(VENEER, List.of(new RoutedSheet(BOARD, SOUND)));
        var none = new MaterialSheets(VENEER, List.of());
        var plan = new RouterPlan(ROUTER, List.of(sheets, none));

        assertThat(RouterVerifier.faults(STOCK, list(Kind.ONE_SHEET), ROUTER, plan))
                .contains("Sheets of 'veneer' are planned twice.");
    }

    private static List<String> faults(List<RoutedPiece> pieces) {
        return faults(STOCK, list(Kind.ONE_STRIP), List.of(new RoutedSheet(BOARD, pieces)));
    }

    private static List<String> faults(Stock stock, CutList list, List<RoutedSheet> sheets) {
        var plan = new RouterPlan(ROUTER, List.of(new MaterialSheets(VENEER, sheets)));
        return RouterVerifier.faults(stock, list, ROUTER, plan);
    }

    private static CutList list(Kind kind) {
        var together = List.of(new Together(kind, List.of("A", "B"), Along.LENGTH, 0));
        return new CutList(List.of(A, B, C, D), List.of(), new Cutting(Set.of(), Set.of(), Set.of(), together));
    }

    private static List<RoutedPiece> with(RoutedPiece more) {
        var all = new ArrayList<>(SOUND);
        all.add(more);
        return all;
    }

    private static List<RoutedPiece> changed(int index, UnaryOperator<RoutedPiece> change) {
        var all = new ArrayList<>(SOUND);
        all.set(index, change.apply(all.get(index)));
        return all;
    }

    private static RoutedPiece moved(RoutedPiece piece, double x, double y) {
        return new RoutedPiece(piece.label(), piece.part(), piece.lie().moved(new Vec2(x, y)));
    }

    /** @param x where the origin of the part's frame comes to lie */
    private static RoutedPiece at(CutLine line, boolean overturned, int quarters, double x, double y) {
        return new RoutedPiece(line.label(), line.part(), new Lie(overturned, quarters, new Vec2(x, y)));
    }

    private static CutLine line(String label, Part part, int count) {
        return new CutLine(label, part, Collections.nCopies(count, part.name()), List.of());
    }

    private static StockSheet board(String name, Material material, double thickness) {
        return new StockSheet(
                name, material, 1500, 1250, thickness, OptionalInt.of(2), Optional.empty(), StockSheet.Source.BOUGHT);
    }
}
