package org.standwright.packet;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.Shelves;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.ShelfRow;
import org.standwright.unit.Units;

/** Where the shelves lie. */
final class ShelfSection implements Section<Stand> {
    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        var shelves = ShelfRow.of(contents.furniture());
        if (shelves.isEmpty()) {
            return;
        }
        flow.heading("Shelves");
        flow.table(new Table(
                List.of(
                        Column.words("Bay"),
                        Column.words("In"),
                        Column.figures("Opening"),
                        Column.words("Shelves"),
                        Column.prose("Undersides above the opening's lower edge")),
                shelves.stream().map(row -> row(row, contents.units())).toList()));
    }

    private static List<String> row(ShelfRow row, Units units) {
        var opening = row.compartment().section().opening();
        return List.of(
                row.compartment().bay(),
                row.compartment().section() instanceof SectionLayout.Closed closed
                        ? "door "
                                + closed.doors().stream()
                                        .map(door -> door.name())
                                        .collect(Collectors.joining(", "))
                        : "open",
                units.bareLength(opening.width()) + " × " + units.bareLength(opening.height()),
                row.kind() == Shelves.Kind.FIXED ? "fixed, housed" : "on pins",
                row.compartment().shelves().stream().map(units::bareLength).collect(Collectors.joining(", ")));
    }
}
