package org.standwright.export;

import static org.standwright.export.TextTable.Align.LEFT;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.standwright.advice.Advice;
import org.standwright.design.StandDesign;
import org.standwright.packet.words.SavingWords;

/** What would save a sheet, as a plain text table: the smallest change first. */
public final class SavingTextWriter {
    private SavingTextWriter() {}

    /**
     * Writes UTF-8.
     *
     * @param before the design as it is
     */
    public static void write(StandDesign before, Advice advice, OutputStream out) throws IOException {
        var lines = new ArrayList<String>(List.of(before.name(), ""));
        if (advice.savings().isEmpty()) {
            lines.add("Nothing that may be changed saves a sheet or money.");
        } else {
            lines.addAll(table(before, advice));
        }
        lines.add("");
        SavingWords.notes(advice).forEach(note -> lines.addAll(WrappedText.lines("", "", note)));
        out.write((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> table(StandDesign before, Advice advice) {
        var table = new TextTable(LEFT, LEFT, LEFT, LEFT);
        table.add("change", "sheets", "cost", "also different");
        SavingWords.of(before, advice)
                .forEach(words -> table.add(words.change(), words.sheets(), words.cost(), words.also()));
        return table.lines();
    }
}
