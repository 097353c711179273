package org.standwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.plan.SheetJob;
import org.standwright.sheet.plan.SheetPlanner;

class SheetPlanVerifierTest {
    private static final SheetJob JOB = SheetJob.sheet(1020, 520)
            .trim(10)
            .kerf(3)
            .grain()
            .pieces("A", 600, 200, 1)
            .pieces("B", 397, 200, 1)
            .pieces("C", 1000, 250, 1);
    private static final StockSheet FROM = StockSheet.bought(JOB.sheet());
    private static final PlannedSheet SOUND = JOB.plan().sheets().get(0);

    @Test
    void findsNoFaultWithASoundPlan() {
        assertThat(faults(SOUND)).isEmpty();
    }

    @Test
    void seesAPieceThatReachesOneUnitIntoTheKerf() {
        var faults = faults(withPiece("B", area -> new Area(area.x() - 1, area.y(), area.length(), area.width())));

        assertThat(faults).anyMatch(fault -> fault.contains("'A'") && fault.contains("leave no kerf"));
        assertThat(faults).anyMatch(fault -> fault.contains("no order of edge-to-edge cuts"));
        assertThat(faults).anyMatch(fault -> fault.contains("piece 'B'") && fault.contains("not what the cuts leave"));
    }

    @Test
    void seesAPieceThatReachesOneUnitIntoTheTrim() {
        assertThat(faults(withPiece("C", area -> new Area(area.x() - 1, area.y(), area.length(), area.width()))))
                .anyMatch(fault -> fault.contains("'C'") && fault.contains("reaches into the trim"));
    }

    @Test
    void seesAPieceMissingAndAPieceTooMany() {
        var fewer = new ArrayList<>(SOUND.pieces());
        var twice = new ArrayList<>(SOUND.pieces());
        fewer.remove(0);
        twice.add(SOUND.pieces().get(0));

        assertThat(faults(new PlannedSheet(FROM, fewer, SOUND.cuts(), SOUND.offcuts())))
                .anyMatch(fault -> fault.equals("Line 'C' has 1 missing."))
                .anyMatch(fault -> fault.contains("neither piece nor offcut"));
        assertThat(faults(new PlannedSheet(FROM, twice, SOUND.cuts(), SOUND.offcuts())))
                .anyMatch(fault -> fault.equals("Line 'C' has 1 too many."))
                .anyMatch(fault -> fault.contains("units²"));
    }

    @Test
    void seesAPieceOfTheWrongSizeOrAnotherList() {
        assertThat(faults(withPiece("A", area -> new Area(area.x(), area.y(), area.length() - 1, area.width()))))
                .anyMatch(fault -> fault.contains("'A'") && fault.contains("is not 1920000 x 640000"));
        assertThat(faults(withLabel("A", "Z"))).anyMatch(fault -> fault.contains("'Z' does not belong"));
    }

    @Test
    void seesAPieceAcrossTheGrain() {
        var pieces = SOUND.pieces().stream()
                .map(piece -> new PlacedPiece(piece.label(), piece.area(), true))
                .toList();

        assertThat(faults(new PlannedSheet(FROM, pieces, SOUND.cuts(), SOUND.offcuts())))
                .anyMatch(fault -> fault.contains("across the grain"));
    }

    @Test
    void seesPiecesThatOnlyARouterCouldFree() {
        int unit = SheetUnit.PER_MM * 100;
        // four pieces around one another like a windmill, a hole in the middle
        var windmill = List.of(
                piece(0, 0, 2, 1, unit), piece(2, 0, 1, 2, unit), piece(1, 2, 2, 1, unit), piece(0, 1, 1, 2, unit));
        var board = StockSheet.bought(SheetJob.sheet(300, 300).sheet());

        assertThat(SheetVerifier.faults(
                        new PlannedSheet(board, windmill, List.of(), List.of()), new Saw(0, 0), Keep.USUAL))
                .contains("no order of edge-to-edge cuts frees its pieces.");
    }

    @Test
    void seesCutsOutOfOrderForgottenOrAcrossTwoPanels() {
        var cuts = SOUND.cuts();
        var crosscutFirst = List.of(numbered(1, cuts.get(2)), numbered(2, cuts.get(0)), numbered(3, cuts.get(1)));

        assertThat(faults(withCuts(crosscutFirst))).anyMatch(fault -> fault.contains("divides 0 panels"));
        assertThat(faults(withCuts(cuts.subList(0, 2)))).anyMatch(fault -> fault.contains("not what the cuts leave"));
        assertThat(faults(withCuts(List.of(cuts.get(1), cuts.get(0), cuts.get(2)))))
                .anyMatch(fault -> fault.contains("not numbered in order"));
    }

    @Test
    void seesABladeThatIsTooThin() {
        var first = SOUND.cuts().get(0);
        var strip = first.kerf();
        var thin = new Cut(
                1,
                first.direction(),
                new Area(strip.x(), strip.y(), strip.length(), strip.width() - 1),
                first.tool(),
                first.purpose(),
                first.reference(),
                first.setting());
        var cuts = new ArrayList<>(SOUND.cuts());
        cuts.set(0, thin);

        assertThat(faults(withCuts(cuts))).anyMatch(fault -> fault.contains("cut 1 "));
    }

    @Test
    void seesAnOffcutThatIsForgottenOrInvented() {
        var invented = List.of(SOUND.offcuts().get(0), new Area(0, 0, 100_000, 100_000));

        assertThat(faults(new PlannedSheet(FROM, SOUND.pieces(), SOUND.cuts(), List.of())))
                .anyMatch(fault -> fault.contains("neither piece nor offcut"));
        assertThat(faults(new PlannedSheet(FROM, SOUND.pieces(), SOUND.cuts(), invented)))
                .anyMatch(fault -> fault.contains("offcut at"));
    }

    @Test
    void seesAPlanForAnotherSawOrSheet() {
        var plan = SheetPlanner.plan(JOB.stock(), JOB.cutList());
        var otherStock = Stock.of(new Saw(4, 10), SheetJob.sheet(3000, 1500).sheet());

        assertThat(SheetPlanVerifier.faults(otherStock, JOB.cutList(), plan))
                .anyMatch(fault -> fault.contains("another saw"))
                .anyMatch(fault -> fault.contains("not in stock"));
    }

    @Test
    void seesEveryShiftOfEveryPieceByOneUnit() {
        for (var piece : SOUND.pieces()) {
            for (int[] by : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                UnaryOperator<Area> shift =
                        area -> new Area(area.x() + by[0], area.y() + by[1], area.length(), area.width());
                assertThat(faults(withPiece(piece.label(), shift))).isNotEmpty();
            }
        }
    }

    private static List<String> faults(PlannedSheet sheet) {
        var material = new MaterialPlan(FROM.material(), List.of(sheet), new Proof(Proof.Goal.SHEETS, 1, 1));
        return SheetPlanVerifier.faults(JOB.stock(), JOB.cutList(), new SheetPlan(JOB.saw(), List.of(material), true));
    }

    private static PlannedSheet withPiece(String label, UnaryOperator<Area> change) {
        var pieces = SOUND.pieces().stream()
                .map(piece -> piece.label().equals(label)
                        ? new PlacedPiece(label, change.apply(piece.area()), piece.turned())
                        : piece)
                .toList();
        return new PlannedSheet(FROM, pieces, SOUND.cuts(), SOUND.offcuts());
    }

    private static PlannedSheet withLabel(String label, String other) {
        var pieces = SOUND.pieces().stream()
                .map(piece ->
                        piece.label().equals(label) ? new PlacedPiece(other, piece.area(), piece.turned()) : piece)
                .toList();
        return new PlannedSheet(FROM, pieces, SOUND.cuts(), SOUND.offcuts());
    }

    private static PlannedSheet withCuts(List<Cut> cuts) {
        return new PlannedSheet(FROM, SOUND.pieces(), cuts, SOUND.offcuts());
    }

    private static PlacedPiece piece(int x, int y, int length, int width, int unit) {
        return new PlacedPiece("W", new Area(x * unit, y * unit, length * unit, width * unit), false);
    }

    private static Cut numbered(int number, Cut cut) {
        return new Cut(number, cut.direction(), cut.kerf(), cut.tool(), cut.purpose(), cut.reference(), cut.setting());
    }
}
