package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Saw.First;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.Trim;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.sheet.SheetPlanVerifier;
import org.standwright.sheet.Stock;

/** What leaves the sheet as one block counts as one piece where the turns of the saw are limited. */
class StagesOfBlocksTest {
    private static final Material WOOD = new Material("plain board", 18, 650, Grain.ALONG_LENGTH);

    static Stream<Arguments> saws() {
        return Stream.of(2, 3)
                .flatMap(stages -> Stream.of(First.values())
                        .flatMap(first -> Stream.of(Kind.values())
                                .flatMap(kind -> Stream.of(true, false)
                                        .map(turned -> Arguments.of(stages, first, kind, turned)))));
    }

    @ParameterizedTest
    @MethodSource("saws")
    void blocksCountAsOnePiece(int stages, First first, Kind kind, boolean turned) {
        var lines =
                List.of(line("A", 400, 150, 5), line("B", 400, 90, 1), line("C", 700, 300, 3), line("D", 250, 60, 4));
        var group = new Together(kind, List.of("A", "A", "B"), Along.WIDTH, 0);

        cuts(stages, first, board(1300, 900), lines, group, turned ? Set.of("A", "B") : Set.of());
    }

    /** Three shelves inside it, pieces of three lengths, and nothing but the block on its board. */
    @ParameterizedTest
    @MethodSource("saws")
    void aBlockMayTakeMoreTurnsThanTheSawIsGiven(int stages, First first, Kind kind, boolean turned) {
        var lines = List.of(line("A", 400, 300, 1), line("B", 250, 200, 1), line("C", 120, 100, 3));
        var group = new Together(Kind.ONE_SHEET, List.of("A", "B", "C", "C", "C"), Along.LENGTH, 0);

        cuts(stages, first, board(500, 640), lines, group, turned ? Set.of("A", "B", "C") : Set.of());
    }

    /** The board is just as wide as the strip, so that no rip passes it; and just as long, so that no crosscut does. */
    @ParameterizedTest
    @MethodSource("saws")
    void aBlockThatSpansTheBoardMayComeFirst(int stages, First first, Kind kind, boolean turned) {
        var lines = List.of(line("A", 300, 150, 2), line("D", 250, 60, 3));
        var group = new Together(Kind.ONE_STRIP, List.of("A", "A"), Along.WIDTH, 0);

        cuts(stages, first, board(900, 313), lines, group, Set.of());
        cuts(stages, first, board(310, 900), lines, group, turned ? Set.of("D") : Set.of());
    }

    private static void cuts(
            int stages, First first, StockSheet board, List<CutLine> lines, Together group, Set<String> free) {
        var saw = new Saw(
                3,
                Trim.all(5),
                OptionalInt.of(stages),
                first,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                Optional.empty());
        var stock = new Stock(List.of(board), saw, new Keep(50, 50));
        var cutList =
                new CutList(lines, List.of(), new Cutting(Set.of(), free, Set.of(), Collections.nCopies(1, group)));

        var plan = SheetPlanner.plan(stock, cutList);

        assertThat(SheetPlanVerifier.faults(stock, cutList, plan)).isEmpty();
    }

    private static StockSheet board(double length, double width) {
        return StockSheet.bought(new SheetGood(WOOD, length, width, Optional.empty(), Optional.empty()));
    }

    private static CutLine line(String label, double length, double width, int count) {
        return SheetJob.line(WOOD, label, length, width, count);
    }
}
