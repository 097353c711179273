package org.standwright.sheet.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.Area;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SheetPlanVerifier;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.plan.FallenApart;
import org.standwright.sheet.plan.Seeds;

/** Simulates every cut of random boards: what falls apart is the pieces at their size, to the unit. */
class RandomBoardsTest {
    private static final Comparator<Area> PLACE = Comparator.comparingInt(Area::x)
            .thenComparingInt(Area::y)
            .thenComparingInt(Area::length)
            .thenComparingInt(Area::width);

    static LongStream seeds() {
        return Seeds.fewOrMany(300, 10_000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPieceFallsOutOfTheBoardsWhenTheCutsAreMade(long seed) {
        for (var sheet : RandomBoards.of(seed).material().sheets()) {
            var expected = new ArrayList<Area>();
            sheet.pieces().forEach(piece -> expected.add(piece.area()));
            expected.addAll(sheet.offcuts());
            var remains = new ArrayList<>(FallenApart.of(sheet.board(), sheet));
            remains.removeIf(
                    area -> !expected.contains(area) && Math.min(area.length(), area.width()) < 25 * SheetUnit.PER_MM);
            remains.sort(PLACE);
            expected.sort(PLACE);
            assertThat(remains).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theVerifierFindsNothing(long seed) {
        var boards = RandomBoards.of(seed);

        assertThat(SheetPlanVerifier.faults(boards.stock(), boards.cutList(), boards.plan()))
                .as(boards::toString)
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPieceIsFreedOnceAndTheAreasAddUpToTheBoards(long seed) {
        var plan = RandomBoards.of(seed).material();
        var areas = plan.areas();

        assertThat(areas.boards()).isEqualTo(plan.sheetArea());
        assertThat(areas.parts()).isEqualTo(plan.pieceArea());
        assertThat(areas.waste()).isNotNegative();
        assertThat(areas.trim()).isNotNegative();
        assertThat(freed(plan)).doesNotHaveDuplicates().hasSameElementsAs(new HashSet<>(uncutLabels(plan)));
    }

    private static List<String> freed(MaterialPlan plan) {
        return plan.setUps().stream()
                .flatMap(setUp -> setUp.cuts().stream())
                .flatMap(made -> made.frees().stream())
                .map(PlacedPiece::label)
                .toList();
    }

    /** Labels of all pieces but those that are a whole board. */
    private static List<String> uncutLabels(MaterialPlan plan) {
        return plan.sheets().stream()
                .flatMap(sheet ->
                        sheet.pieces().stream().filter(piece -> !piece.area().equals(sheet.board())))
                .map(PlacedPiece::label)
                .toList();
    }
}
