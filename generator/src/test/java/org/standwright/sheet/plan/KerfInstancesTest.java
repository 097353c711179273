package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.job.BinInstance;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.sawing.Block;
import org.standwright.sheet.sawing.Sawing;
import org.standwright.sheet.search.Search;

/** The public instances, a unit of theirs a millimetre, sawn with a kerf of 2 % of the bin's side, cut by cut. */
class KerfInstancesTest {
    private static final Material BOARD = new Material("plain board", 18, 650, Grain.NONE);

    static Stream<BinInstance> instances() {
        return BinInstance.small().stream().filter(one -> one.number() == 1);
    }

    @ParameterizedTest
    @MethodSource("instances")
    void everyItemFallsOutOfTheBinsAtItsSizeWithRotation(BinInstance instance) {
        assertThat(recovered(instance, true)).isEqualTo(wanted(instance, true));
    }

    @ParameterizedTest
    @MethodSource("instances")
    void everyItemFallsOutOfTheBinsAtItsSizeWithout(BinInstance instance) {
        assertThat(recovered(instance, false)).isEqualTo(wanted(instance, false));
    }

    /** Sizes of what lies on the bench in the end where the plan says that a piece lies. */
    private static List<String> recovered(BinInstance instance, boolean turning) {
        var recovered = new ArrayList<String>();
        for (var sheet : sawn(instance, turning)) {
            var remains = FallenApart.of(sheet.board(), sheet);
            for (var piece : sheet.pieces()) {
                assertThat(remains).contains(piece.area());
                recovered.add(size(piece.area().length(), piece.area().width(), turning));
            }
            assertThat(sheet.pieces()).doesNotHaveDuplicates();
        }
        recovered.sort(null);
        return recovered;
    }

    private static List<String> wanted(BinInstance instance, boolean turning) {
        return instance.items().stream()
                .map(item -> size(item.height() * SheetUnit.PER_MM, item.width() * SheetUnit.PER_MM, turning))
                .sorted()
                .toList();
    }

    private static String size(int length, int width, boolean turning) {
        return turning && length < width ? width + "x" + length : length + "x" + width;
    }

    private static List<PlannedSheet> sawn(BinInstance instance, boolean turning) {
        int kerf = 2 * instance.width() * SheetUnit.PER_MM / 100;
        var job = instance.job(turning, kerf, SheetUnit.PER_MM);
        var answer = Search.run(job, LowerBound.of(job), Budget.rounds(2, 1), better -> {})
                .answers()
                .get(0);
        var bin = new StockSheet(
                "bin",
                BOARD,
                instance.height(),
                instance.width(),
                18,
                OptionalInt.empty(),
                Optional.empty(),
                StockSheet.Source.BOUGHT);
        var saw = new Saw(SheetUnit.mm(kerf), 0);
        return Sawing.of(List.of(bin), answer.boards(), blocks(job, kerf), saw, new Keep(1, 1), Set.of());
    }

    private static List<Block> blocks(PackingJob job, int kerf) {
        var blocks = new ArrayList<Block>();
        for (var type : job.types()) {
            var label = "P" + (blocks.size() + 1);
            blocks.add(Block.piece(line(label, type, kerf), type.length(), type.width()));
        }
        return blocks;
    }

    private static CutLine line(String label, PieceType type, int kerf) {
        double length = SheetUnit.mm(type.length() - kerf);
        var part = Part.blank(label, BOARD, length, SheetUnit.mm(type.width() - kerf));
        return new CutLine(label, part, List.of(label), List.of());
    }
}
