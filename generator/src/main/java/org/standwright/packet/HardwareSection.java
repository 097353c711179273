package org.standwright.packet;

import java.util.List;
import java.util.regex.Pattern;
import org.standwright.design.built.Furniture;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;

/** What to buy beside the boards. */
final class HardwareSection implements Section<Furniture> {
    private static final Pattern BOLT = Pattern.compile("\\b(bolt|lock nut)");

    @Override
    public void print(Contents<? extends Furniture> contents, Flow flow) {
        flow.heading("Hardware");
        var rows = contents.cutList().hardware().stream()
                .map(line -> List.of(String.valueOf(line.count()), line.item(), String.join("; ", line.uses())))
                .toList();
        flow.table(new Table(List.of(Column.figures("Count"), Column.prose("Item"), Column.prose("Use")), rows));
        boolean bolts = contents.cutList().hardware().stream()
                .anyMatch(line -> BOLT.matcher(line.item()).find());
        flow.paragraph("Screws into the edge of a panel carry no rated load."
                + (bolts ? " Tighten bolts again after the first hours of use." : ""));
    }
}
