package org.standwright.packet;

import java.util.List;
import org.standwright.design.built.Stand;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.SavingWords;

/** What would save a sheet, where the design says what may change and something was found. */
final class SavingSection implements Section<Stand> {
    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        contents.savings().filter(advice -> !advice.savings().isEmpty()).ifPresent(advice -> {
            flow.heading("What would save a sheet");
            flow.paragraph("The smallest change first. Each was built, checked and planned; the plans of this "
                    + "packet are those without it. " + String.join(" ", SavingWords.notes(advice)));
            var rows = SavingWords.of(contents.furniture().design(), advice).stream()
                    .map(words -> List.of(words.change(), words.sheets(), words.cost(), words.also()))
                    .toList();
            flow.table(new Table(
                    List.of(
                            Column.prose("Change"),
                            Column.words("Sheets"),
                            Column.words("Cost"),
                            Column.prose("Also different")),
                    rows));
        });
    }
}
