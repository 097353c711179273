package org.standwright.packet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.standwright.design.Designs;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.StockSheet.Source;
import org.standwright.design.kit.Trim;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.Cut.Purpose;
import org.standwright.sheet.Cut.Tool;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlacedPiece.Parting;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Money;

/**
 * A plan made by hand with all that a list for the saw has to say: a board that is broken down by a hand-held saw with a
 * kerf of 3 mm, its lower edge trimmed, and one at hand with a thickness of its own. The saw's kerf is 4 mm.
 */
final class HandSawn {
    static final Saw SAW = new Saw(
            4,
            new Trim(0, 0, 5, 0),
            OptionalInt.empty(),
            Saw.First.EITHER,
            OptionalDouble.empty(),
            OptionalDouble.of(1200),
            300,
            Optional.of(new BreakDown(3, 5)));

    private static final int MM = 3200;

    private HandSawn() {}

    /** @param waits label of the pieces that wait */
    static SheetPlan plan(String waits) {
        var sheets = List.of(broken(waits), atHand());
        return new SheetPlan(
                SAW,
                List.of(new MaterialPlan(
                        Designs.BOARD_18.material(), sheets, new Proof(Proof.Goal.MONEY, 62_000, 62_000))),
                true);
    }

    private static PlannedSheet broken(String waits) {
        var good = Designs.BOARD_18;
        var from = new StockSheet(
                good.material().name(),
                good.material(),
                2440,
                1220,
                18,
                OptionalInt.empty(),
                Optional.of(Money.parse("62.00 EUR")),
                Source.BOUGHT);
        var blank = area(1203, 409, 1237, 811);
        var held = List.of(
                new PlacedPiece("Y3", area(1203, 409, 1237, 400), false),
                new PlacedPiece("Y3", area(1203, 813, 1237, 407), false));
        return new PlannedSheet(
                from,
                List.of(
                        new PlacedPiece("Y1", area(0, 5, 1193, 400), false),
                        new PlacedPiece("Y2", area(0, 409, 600, 811), true),
                        new PlacedPiece(waits, area(1203, 5, 600, 400), false),
                        new PlacedPiece("Y3 + Y3", blank, false, Parting.LATER, held)),
                List.of(
                        new Cut(
                                1,
                                Direction.CROSSCUT,
                                area(1200, 0, 3, 1220),
                                Tool.BREAK_DOWN_SAW,
                                Purpose.DIVIDE,
                                Edge.X0,
                                1200 * MM),
                        saw(2, Direction.RIP, Purpose.TRIM, area(0, 1, 1200, 4), Edge.Y1, 1215),
                        saw(3, Direction.RIP, Purpose.TRIM, area(1203, 1, 1237, 4), Edge.Y1, 1215),
                        saw(4, Direction.CROSSCUT, Purpose.RECUT, area(1193, 5, 4, 1215), Edge.X0, 1193),
                        saw(5, Direction.RIP, Purpose.DIVIDE, area(0, 405, 1193, 4), Edge.Y0, 400),
                        saw(6, Direction.RIP, Purpose.DIVIDE, area(1203, 405, 1237, 4), Edge.Y0, 400),
                        saw(7, Direction.CROSSCUT, Purpose.DIVIDE, area(600, 409, 4, 811), Edge.X0, 600),
                        saw(8, Direction.CROSSCUT, Purpose.DIVIDE, area(1803, 5, 4, 400), Edge.X0, 600)),
                List.of(area(604, 409, 589, 811), area(1807, 5, 633, 400)));
    }

    private static PlannedSheet atHand() {
        var from = new StockSheet(
                "rest of the bench",
                Designs.BOARD_18.material(),
                900,
                700,
                17.6,
                OptionalInt.of(1),
                Optional.empty(),
                Source.AT_HAND);
        return new PlannedSheet(
                from,
                List.of(new PlacedPiece("Y4", area(0, 0, 200, 100), false)),
                List.of(
                        saw(9, Direction.CROSSCUT, Purpose.DIVIDE, area(200, 0, 4, 700), Edge.X0, 200),
                        saw(10, Direction.RIP, Purpose.DIVIDE, area(0, 100, 200, 4), Edge.Y0, 100)),
                List.of(area(204, 0, 696, 700), area(0, 104, 200, 596)));
    }

    private static Cut saw(int number, Direction direction, Purpose purpose, Area kerf, Edge from, int setting) {
        return new Cut(number, direction, kerf, Tool.SAW, purpose, from, setting * MM);
    }

    private static Area area(int x, int y, int length, int width) {
        return new Area(x * MM, y * MM, length * MM, width * MM);
    }
}
