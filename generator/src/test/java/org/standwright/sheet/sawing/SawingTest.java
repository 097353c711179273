package org.standwright.sheet.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Trim;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.sheet.PlacedPiece;

class SawingTest {
    private static final Saw PLAIN = new Saw(3, 0);

    /** Kerf 3 mm; rips to 2500 mm, crosscuts to 700 mm; a hand-held saw of 2 mm leaves 5 mm. */
    private static Saw limited(Trim trim) {
        return new Saw(
                3,
                trim,
                OptionalInt.empty(),
                Saw.First.EITHER,
                OptionalDouble.of(2500),
                OptionalDouble.of(700),
                0,
                Optional.of(new BreakDown(2, 5)));
    }

    /** Kerf 3 mm, no limit. */
    private static Saw free(Trim trim, double smallest) {
        return new Saw(
                3,
                trim,
                OptionalInt.empty(),
                Saw.First.EITHER,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                smallest,
                Optional.empty());
    }

    @Test
    void makesEqualSettingsOfAllBoardsTogether() {
        var shop = new Shop(PLAIN);
        shop.board(shop.rip(
                shop.crosscut(shop.piece("A", 600, 200), shop.piece("B", 397, 200)), shop.piece("C", 1000, 100)));
        shop.board(shop.rip(shop.piece("D", 800, 200), shop.rest(800, 300)));

        assertThat(Shop.text(shop.plan()))
                .isEqualTo(
                        "rip 200: sheet 1 from Y0 C; sheet 2 from Y0 D offcut\n" + "crosscut 600: sheet 1 from X0 A B");
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void trimsFirstAndTakesTheOtherEdgeForTheFence() {
        var shop = new Shop(free(new Trim(10, 0, 2, 5), 0));
        shop.board(shop.rip(shop.piece("A", 800, 200), shop.piece("B", 800, 100)));

        assertThat(Shop.text(shop.plan()))
                .isEqualTo("rip 308: trim sheet 1 from Y1\n"
                        + "crosscut 800: trim sheet 1 from X1\n"
                        + "rip 303: trim sheet 1 from Y0\n"
                        + "rip 200: sheet 1 from Y0 A B");
        // 2 mm are narrower than the blade, which runs off
        assertThat(shop.plan().areas().trim()).isEqualTo(units2(7 * 308 + 800 * 2));
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void leavesAnAllowanceWhereTheSawGetsAtItLater() {
        var shop = new Shop(limited(Trim.all(0)));
        shop.board(shop.crosscut(
                shop.rip(shop.piece("A", 1000, 600), shop.piece("B", 1000, 500)), shop.piece("C", 800, 1103)));

        // A and B are recut after the rip; C is never short enough, so that its edge is the hand-held saw's
        assertThat(Shop.text(shop.plan()))
                .isEqualTo("by hand crosscut 1010: sheet 1 from X0 C\n"
                        + "rip 600: sheet 1 from Y0\n"
                        + "crosscut 1000: recut sheet 1 from X0 A; recut sheet 1 from X0 B");
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void makesTwoCutsWhereNeitherSideCanBeRecut() {
        var shop = new Shop(limited(Trim.all(0)));
        shop.board(shop.crosscut(shop.piece("A", 1000, 1103), shop.piece("B", 800, 1103)));

        assertThat(Shop.text(shop.plan()))
                .isEqualTo("by hand crosscut 1000: sheet 1 from X0 A\n" + "by hand crosscut 800: sheet 1 from X1 B");
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void givesTheRestWhatTheAllowanceWouldTake() {
        var shop = new Shop(limited(Trim.all(0)));
        shop.board(
                shop.crosscut(shop.rip(shop.piece("A", 1000, 600), shop.piece("B", 1000, 500)), shop.rest(400, 1103)));

        assertThat(shop.plan().sheets().get(0).offcuts())
                .extracting(offcut -> Shop.mm(offcut.x()) + " " + Shop.mm(offcut.length()))
                .containsExactly("1007 405");
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void trimsByHandOnlyWhatNoSmallerPanelCouldTrim() {
        var strips = new Shop(limited(new Trim(10, 10, 0, 0)));
        strips.board(strips.rip(strips.piece("A", 1000, 600), strips.piece("B", 1000, 500)));
        var whole = new Shop(limited(new Trim(10, 10, 0, 0)));
        whole.board(whole.rip(whole.piece("A", 1000, 900), whole.piece("B", 1000, 500)));

        assertThat(Shop.text(strips.plan()))
                .startsWith("rip 600: sheet 1 from Y0\ncrosscut 1010: trim sheet 1 from X1;");
        assertThat(Shop.text(whole.plan()))
                .isEqualTo("by hand crosscut 1010: trim sheet 1 from X1\n"
                        + "by hand crosscut 1000: trim sheet 1 from X0\n" + "rip 900: sheet 1 from Y0 A B");
        assertThat(strips.faults()).isEmpty();
        assertThat(whole.faults()).isEmpty();
    }

    @Test
    void cutsWhatWaitsAfterAllElse() {
        var shop = new Shop(PLAIN);
        shop.later = Set.of("B", "C");
        shop.board(shop.rip(
                shop.crosscut(shop.piece("B", 600, 200), shop.piece("C", 397, 200)),
                shop.crosscut(shop.piece("A", 500, 100), shop.piece("B2", 497, 100))));

        assertThat(Shop.text(shop.plan()))
                .isEqualTo("rip 200: sheet 1 from Y0\ncrosscut 500: sheet 1 from X0 A B2\n"
                        + "crosscut 600: sheet 1 from X0 B C");
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void partsABlockOnTheSheetInItsOrderEvenWhenItLiesTurned() {
        var shop = new Shop(PLAIN);
        var row = shop.row(Block.Parting.ON_SHEET, true, 300, 100, "A", "B", "A");
        shop.board(shop.crosscut(row, shop.piece("C", 500, 906)));

        assertThat(Shop.text(shop.plan()))
                .isEqualTo("crosscut 500: sheet 1 from X0 C\nrip 300: sheet 1 from Y0 A; sheet 1 from Y0 B A");
        assertThat(shop.plan().sheets().get(0).pieces())
                .filteredOn(PlacedPiece::turned)
                .extracting(piece -> piece.label() + " " + Shop.mm(piece.area().y()))
                .containsExactly("A 0", "B 303", "A 606");
        assertThat(shop.faults()).isEmpty();
    }

    @Test
    void leavesABlankWholeAndSaysWhereItsPiecesLie() {
        var shop = new Shop(PLAIN);
        var blank = shop.row(Block.Parting.LATER, false, 60, 40, "A", "B", "A");
        shop.board(shop.rip(shop.piece("C", 186, 500), blank));

        var placed = shop.plan().sheets().get(0).pieces().get(1);
        assertThat(Shop.text(shop.plan())).isEqualTo("rip 500: sheet 1 from Y0 C A + B + A");
        assertThat(placed.holds())
                .extracting(part -> part.label() + " " + Shop.mm(part.area().x()) + " "
                        + Shop.mm(part.area().y()))
                .containsExactly("A 0 503", "B 63 503", "A 126 503");
        assertThat(shop.faults()).isEmpty();
    }

    /** Two strips with long faces of 100 mm at 45° from 18 mm: 200 − 18 + 3·√2 mm, which is 186.243 mm. */
    @Test
    void takesABevelledPairForOneBlank() {
        var shop = new Shop(PLAIN);
        shop.board(shop.rip(shop.piece("C", 1000, 500), shop.bevel("W", 1000, 100, 186.243)));
        var narrow = new Shop(PLAIN);
        narrow.board(narrow.rip(narrow.piece("C", 1000, 500), narrow.bevel("W", 1000, 100, 186.23)));

        assertThat(Shop.text(shop.plan())).isEqualTo("rip 500: sheet 1 from Y0 C W + W");
        assertThat(shop.faults()).isEmpty();
        assertThat(narrow.faults()).singleElement().asString().contains("too narrow for two strips");
    }

    @Test
    void cutsSmallPiecesOffALargePanelAndNamesThoseThatStayTooShort() {
        var shop = new Shop(free(Trim.all(0), 200));
        shop.board(shop.rip(
                shop.crosscut(shop.piece("A", 600, 150), shop.piece("B", 100, 150), shop.piece("C", 200, 150)),
                shop.piece("D", 906, 400)));

        var plan = shop.plan();
        assertThat(Shop.text(plan))
                .isEqualTo(
                        "rip 400: sheet 1 from Y0 D\ncrosscut 100: sheet 1 from X0 B\ncrosscut 200: sheet 1 from X0 C A");
        assertThat(plan.shortCuts(free(Trim.all(0), 200)))
                .extracting(cut -> cut.cut().number() + " " + cut.parts() + " " + Shop.mm(cut.along()))
                .containsExactly("2 [B, C, A] 150", "3 [C, A] 150");
    }

    @Test
    void saysWhichFaceLiesUpAndWhichCutsAreScored() {
        var shop = new Shop(limited(Trim.all(0)), Grain.ALONG_LENGTH);
        shop.board(shop.crosscut(
                shop.piece("A", 1000, 1103), shop.rip(shop.piece("B", 800, 500), shop.piece("C", 800, 600))));
        var cuts = shop.plan().sheets().get(0).cuts();

        assertThat(cuts).extracting(cut -> cut.goodFaceUp()).containsExactly(false, true, true, true);
        assertThat(cuts)
                .extracting(cut -> cut.isScored(new Material("veneered", 18, 650, Grain.ALONG_LENGTH)))
                .containsExactly(true, false, true, true);
        assertThat(cuts).noneMatch(cut -> cut.isScored(new Material("plain", 18, 650, Grain.NONE)));
    }

    private static long units2(int mm2) {
        return (long) mm2 * 3200 * 3200;
    }
}
