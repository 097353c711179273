package org.standwright.packet;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.geom.Grid;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.unit.Units;

/** What to cut. */
final class CutListSection implements Section {
    @Override
    public void print(Contents contents, Flow flow) {
        flow.freshPage();
        flow.heading("Cut list");
        CutListWords.paragraphs().forEach(flow::paragraph);
        var later = SecondStage.of(contents.stand());
        if (contents.cutList().lines().stream().anyMatch(later::holds)) {
            flow.paragraph("Lines marked 'stage 2' are parts of drawers. Cut them when the carcass is glued and its "
                    + "openings are measured: their sizes here are those of the drawing.");
        }
        contents.cutList().lines().stream().map(CutLine::material).distinct().forEach(material -> {
            flow.heading(material.name());
            flow.table(table(material, later, contents));
        });
    }

    private static Table table(Material material, SecondStage later, Contents contents) {
        var rows = contents.cutList().lines().stream()
                .filter(line -> line.material().equals(material))
                .map(line -> row(line, later, contents.units()))
                .toList();
        return new Table(
                List.of(
                        Column.words("Label"),
                        Column.words("Part"),
                        Column.figures("Count"),
                        Column.figures("Cut size"),
                        Column.prose("Notes")),
                rows);
    }

    private static List<String> row(CutLine line, SecondStage later, Units units) {
        var part = line.part();
        var size = size(part.roughLength(), part.roughWidth(), part, units);
        var finished =
                Grid.same(part.oversize(), 0) ? "" : "\nfinished\n" + size(part.length(), part.width(), part, units);
        return List.of(
                line.label(),
                part.name(),
                String.valueOf(line.count()),
                size + finished,
                notes(line, later).collect(Collectors.joining("\n")));
    }

    private static Stream<String> notes(CutLine line, SecondStage later) {
        var stage = later.holds(line) ? Stream.of(SecondStage.MARK) : Stream.<String>empty();
        return Stream.of(stage, uses(line), line.notes().stream()).flatMap(Function.identity());
    }

    /** Which parts of the stand it is, where its name alone does not say so. */
    private static Stream<String> uses(CutLine line) {
        return line.members().equals(List.of(line.part().name()))
                ? Stream.empty()
                : Stream.of("for " + MemberNames.of(line));
    }

    private static String size(double length, double width, Part part, Units units) {
        return units.bareLength(length) + " × " + units.bareLength(width) + " × " + units.bareLength(part.thickness());
    }
}
