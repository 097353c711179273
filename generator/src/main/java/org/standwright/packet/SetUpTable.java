package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.SawWords;
import org.standwright.packet.words.SawnCut;
import org.standwright.packet.words.SetUp;
import org.standwright.sheet.Cut;
import org.standwright.unit.Units;

/** Set-ups as a table, a row for each sheet of each of them, with a box to tick. */
final class SetUpTable {
    private SetUpTable() {}

    static Table of(List<SetUp> setUps, Units units) {
        return new Table(
                List.of(
                        Column.figures("Set-up"),
                        Column.words("Cut"),
                        Column.figures(setUps.get(0).tool() == Cut.Tool.SAW ? "Fence" : "Guide"),
                        Column.words("From"),
                        Column.tick("Done"),
                        Column.figures("Sheet"),
                        Column.words("Cuts"),
                        Column.prose("Falls free")),
                setUps.stream().flatMap(setUp -> rows(setUp, units).stream()).toList());
    }

    private static List<List<String>> rows(SetUp setUp, Units units) {
        var rows = new ArrayList<List<String>>();
        for (var cuts : setUp.bySheet()) {
            boolean first = rows.isEmpty();
            rows.add(List.of(
                    first ? String.valueOf(setUp.number()) : "",
                    first ? SawWords.kind(setUp) : "",
                    first ? units.bareLength(setUp.setting()) : "",
                    first ? SawWords.edge(setUp.reference()) : "",
                    "tick",
                    String.valueOf(cuts.get(0).sheet()),
                    SawWords.runs(cuts.stream().map(cut -> cut.cut().number()).toList()),
                    free(cuts)));
        }
        return rows;
    }

    /** With the cut's number before it where the row has several cuts. */
    private static String free(List<SawnCut> cuts) {
        return cuts.stream()
                .filter(cut -> !cut.frees().isEmpty())
                .map(cut -> (cuts.size() > 1 ? cut.cut().number() + ": " : "") + String.join(", ", cut.frees()))
                .collect(Collectors.joining("; "));
    }
}
