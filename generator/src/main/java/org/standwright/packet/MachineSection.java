package org.standwright.packet;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.standwright.design.PlateOpening;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;
import org.standwright.drawing.figure.PanelHole;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.unit.Units;

/** Where the machine stands, its bolts, and all that goes through worktop and back. */
final class MachineSection implements Section<Stand> {
    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        var stand = contents.furniture();
        stand.machine().ifPresent(machine -> machine(machine, contents, flow));
        holes("Holes in the worktop", "front edge", PanelHole.inWorktop(stand), contents, flow);
        contents.furniture()
                .design()
                .worktop()
                .plate()
                .ifPresent(plate -> flow.paragraph(plate.name() + ": its opening is made from "
                        + "the plate as measured, " + contents.exact(plate.width()) + " × "
                        + contents.exact(plate.depth())
                        + ", " + contents.exact(plate.thickness()) + " thick, corners of "
                        + contents.exact(plate.radius())
                        + ", with " + contents.exact(plate.fit()) + " to spare on a ledge of "
                        + contents.exact(plate.ledge())
                        + ". Its rabbet is deeper than the plate by " + contents.exact(PlateOpening.TO_LEVEL)
                        + ": the levelling screws bring it flush. Try it with the plate in hand."));
        holes("Holes in the back", "lower edge of the carcass", PanelHole.inBack(stand), contents, flow);
    }

    private static void machine(MachineLayout machine, Contents<? extends Stand> contents, Flow flow) {
        flow.heading("Machine on the worktop");
        flow.paragraph(contents.furniture().design().machine().name() + ": base "
                + turned(contents.furniture().design().place().turn()) + ". Operator at the "
                + word(machine.operator()) + "."
                + machine.infeed()
                        .map(side -> " Boards go in at the " + word(side) + ".")
                        .orElse(""));
        flow.table(position(machine, contents));
        if (!machine.bolts().isEmpty()) {
            contents.furniture().assembly().hardware().stream()
                    .filter(line -> line.use().startsWith("machine"))
                    .forEach(line -> flow.item(Mark.BOX_ONLY, line.count() + " × " + line.item() + ": " + line.use()));
            flow.paragraph(
                    "The bolts' places are among the holes in the worktop below. Lay the machine's own base or a rubbing of it on the worktop before boring: these places "
                            + "are those of the preset. Tighten again after the first hours of use.");
        }
    }

    private static String turned(int degrees) {
        return degrees == 0 ? "not turned" : "turned by " + degrees + "° counter-clockwise, seen from above";
    }

    private static Table position(MachineLayout machine, Contents<? extends Stand> contents) {
        var top = contents.furniture().worktop();
        var base = machine.base();
        var units = contents.units();
        var columns = List.of(
                Column.words("From the base to the worktop's"),
                Column.figures("Left edge"),
                Column.figures("Right edge"),
                Column.figures("Front edge"),
                Column.figures("Back edge"));
        var row = List.of(
                "distance, less than 0 where it reaches over",
                units.bareLength(base.min().x() - top.min().x()),
                units.bareLength(top.max().x() - base.max().x()),
                units.bareLength(base.min().y() - top.min().y()),
                units.bareLength(top.max().y() - base.max().y()));
        return new Table(columns, List.of(row));
    }

    private static void holes(
            String title, String lower, List<PanelHole> holes, Contents<? extends Stand> contents, Flow flow) {
        if (holes.isEmpty()) {
            return;
        }
        flow.heading(title);
        var units = contents.units();
        flow.table(new Table(
                List.of(
                        Column.figures("No."),
                        Column.words("For"),
                        Column.figures("x from left edge"),
                        Column.figures("y from " + lower),
                        Column.figures("Size"),
                        Column.figures("Corner radius"),
                        Column.words("Depth")),
                IntStream.range(0, holes.size())
                        .mapToObj(i -> row(i + 1, holes.get(i), units))
                        .toList()));
    }

    private static List<String> row(int number, PanelHole hole, Units units) {
        return List.of(
                String.valueOf(number),
                hole.purpose(),
                units.bareLength(hole.x()),
                units.bareLength(hole.y()),
                hole.isRound()
                        ? "Ø " + units.bareLength(2 * hole.radius())
                        : units.bareLength(hole.area().width()) + " × "
                                + units.bareLength(hole.area().height()),
                hole.isRound() ? "" : units.bareLength(hole.radius()),
                hole.depth().isPresent() ? units.bareLength(hole.depth().getAsDouble()) : "through");
    }

    private static String word(Enum<?> side) {
        return side.name().toLowerCase(Locale.ROOT);
    }
}
