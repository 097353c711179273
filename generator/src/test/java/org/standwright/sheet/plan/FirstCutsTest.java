package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Saw.First;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.Trim;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Stock;

/** What a saw can begin a board with. */
class FirstCutsTest {
    private static final Material WOOD = new Material("veneered board", 18, 650, Grain.ALONG_LENGTH);

    @ParameterizedTest
    @EnumSource(First.class)
    void aPieceThatSpansTheBoardIsCutOffItWhateverComesFirst(First first) {
        var saw = new Saw(
                3,
                Trim.all(10),
                OptionalInt.of(2),
                first,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                Optional.empty());

        assertThat(pieces(saw, 1020, 520, 400, 500)).isEqualTo(1);
        assertThat(pieces(saw, 1020, 520, 1000, 300)).isEqualTo(1);
    }

    /** 2.5 mm and twice 5 mm by hand are 9.5 mm more than a kerf of 3 mm; 5 mm are left beside the piece. */
    @Test
    void refusesABreakDownCutWithTooLittleRoomAndNamesWhatWouldDo() {
        assertThatThrownBy(() -> pieces(byHand(200, 5), 1000, 500, 995, 300))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage(
                        "cut line 'A' (part A, 995.00 x 300.00 mm) cannot be sawn from any board: the crosscut beside"
                                + " it is 300.00 mm long, which takes the break-down saw; its kerf and what is recut on both"
                                + " sides of it take 9.50 mm beyond the saw's own kerf, but 5.00 mm are left. Make it at least"
                                + " 4.51 mm shorter. Use a saw that makes the cut itself: \"longestCrosscut\": \"300.00 mm\"."
                                + " Leave less to be recut: \"allowance\": \"2.74 mm\".");

        assertThat(pieces(byHand(200, 5), 1000, 500, 995 - 4.51, 300)).isEqualTo(1);
        assertThat(pieces(byHand(300, 5), 1000, 500, 995, 300)).isEqualTo(1);
        assertThat(pieces(byHand(200, 2.74), 1000, 500, 995, 300)).isEqualTo(1);
    }

    @Test
    void refusesABoardThatTheSawGoesThroughNeitherWayWhileItsEdgesAreThere() {
        assertThatThrownBy(() -> pieces(limited(900, 500), 1000, 510, 300, 200))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("a board of 'veneered board' is 1000.00 x 510.00 mm before its edges are trimmed, and a saw"
                        + " that cuts 900.00 mm in a rip and 500.00 mm in a crosscut goes through it neither way. Add a"
                        + " break-down saw: \"breakDown\": {}. Use a saw that goes through it: \"longestCrosscut\":"
                        + " \"510.00 mm\".");

        assertThat(pieces(limited(900, 510), 1000, 510, 300, 200)).isEqualTo(1);
    }

    private static Saw byHand(double longestCrosscut, double allowance) {
        return new Saw(
                3,
                Trim.all(0),
                OptionalInt.empty(),
                First.EITHER,
                OptionalDouble.empty(),
                OptionalDouble.of(longestCrosscut),
                0,
                Optional.of(new BreakDown(2.5, allowance)));
    }

    private static Saw limited(double longestRip, double longestCrosscut) {
        return new Saw(
                3,
                Trim.all(5),
                OptionalInt.empty(),
                First.EITHER,
                OptionalDouble.of(longestRip),
                OptionalDouble.of(longestCrosscut),
                0,
                Optional.empty());
    }

    /** How many pieces of one line of one come off one board. */
    private static int pieces(Saw saw, double boardLength, double boardWidth, double length, double width) {
        var good = new SheetGood(WOOD, boardLength, boardWidth, Optional.empty(), Optional.empty());
        var stock = new Stock(List.of(StockSheet.bought(good)), saw, new Keep(50, 50));
        var line = SheetJob.line(WOOD, "A", length, width, 1);
        var plan = SheetPlanner.plan(stock, new CutList(List.of(line), List.of()));
        return plan.materials().get(0).sheets().get(0).pieces().size();
    }
}
