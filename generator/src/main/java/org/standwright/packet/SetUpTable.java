package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.Guide;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SawWords;
import org.standwright.sheet.Cut;
import org.standwright.sheet.SetUp.Made;
import org.standwright.unit.Units;

/** Set-ups of one tool as a table, a row for each sheet and guide of each of them, with a box to tick. */
final class SetUpTable {
    private SetUpTable() {}

    static Table of(List<NumberedSetUp> setUps, Units units) {
        boolean fence = setUps.get(0).setUp().tool() == Cut.Tool.SAW;
        return new Table(
                List.of(
                        Column.figures("Set-up"),
                        Column.words("Cut"),
                        Column.figures(fence ? "Fence" : "Guide"),
                        Column.tick("Done"),
                        Column.figures("Sheet"),
                        Column.words("From"),
                        Column.words("Cuts"),
                        Column.prose("Falls free")),
                setUps.stream().flatMap(setUp -> rows(setUp, units).stream()).toList());
    }

    private static List<List<String>> rows(NumberedSetUp setUp, Units units) {
        var rows = new ArrayList<List<String>>();
        var before = Optional.<String>empty();
        for (var cuts : setUp.bySheet()) {
            boolean first = rows.isEmpty();
            var kind = kind(setUp, cuts.get(0).cut());
            rows.add(List.of(
                    first ? String.valueOf(setUp.number()) : "",
                    before.equals(Optional.of(kind)) ? "" : kind,
                    first ? units.bareLength(setUp.setting()) : "",
                    "tick",
                    String.valueOf(cuts.get(0).sheet() + 1),
                    SawWords.edge(cuts.get(0).cut().reference()),
                    SawWords.runs(cuts.stream().map(made -> made.cut().number()).toList()),
                    free(cuts)));
            before = Optional.of(kind);
        }
        return rows;
    }

    /** The sled is named, the fence is not. */
    private static String kind(NumberedSetUp setUp, Cut cut) {
        return SawWords.kind(setUp.setUp()) + (Guide.of(cut) == Guide.SLED_AND_STOP ? ", sled" : "");
    }

    /** With the cut's number before it where the row has several cuts. */
    private static String free(List<Made> cuts) {
        return cuts.stream()
                .filter(made -> !SawWords.frees(made).isEmpty())
                .map(made ->
                        (cuts.size() > 1 ? made.cut().number() + ": " : "") + String.join(", ", SawWords.frees(made)))
                .collect(Collectors.joining("; "));
    }
}
