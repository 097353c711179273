package org.standwright.packet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.geom.Grid;
import org.standwright.packet.Table.Column;
import org.standwright.part.Part;
import org.standwright.unit.Units;

/** What to cut. */
final class CutListSection implements Section {
    @Override
    public void print(Contents contents, Flow flow) {
        flow.freshPage();
        flow.heading("Cut list");
        flow.paragraph(
                "Cut size: length along the grain × width × thickness, as it leaves the saw. Places in the notes: "
                        + "x along the grain from the reference end, y across it from the reference edge. Mark the reference "
                        + "face and edge of every piece as soon as it is cut. A pair that ends in -L and -R mirrors each other.");
        var rows = contents.cutList().lines().stream()
                .map(line -> row(line, contents.units()))
                .toList();
        flow.table(new Table(
                List.of(
                        Column.words("Label"),
                        Column.prose("Part"),
                        Column.prose("Material"),
                        Column.figures("Count"),
                        Column.figures("Cut size"),
                        Column.prose("Notes")),
                rows));
    }

    private static List<String> row(CutLine line, Units units) {
        var part = line.part();
        var size = size(part.cutLength(), part.cutWidth(), part, units);
        var finished =
                Grid.same(part.oversize(), 0) ? "" : "\nfinished\n" + size(part.length(), part.width(), part, units);
        return List.of(
                line.label(),
                part.name(),
                line.material().name(),
                String.valueOf(line.count()),
                size + finished,
                Stream.concat(uses(line), line.notes().stream()).collect(Collectors.joining("\n")));
    }

    /** Which parts of the stand it is, where its name alone does not say so. */
    private static Stream<String> uses(CutLine line) {
        return line.members().equals(List.of(line.part().name()))
                ? Stream.empty()
                : Stream.of("for " + String.join(", ", line.members()));
    }

    private static String size(double length, double width, Part part, Units units) {
        return units.bareLength(length) + " × " + units.bareLength(width) + " × " + units.bareLength(part.thickness());
    }
}
