package org.standwright.packet;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.design.built.Furniture;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.BlankSizes;
import org.standwright.packet.words.CutListWords;
import org.standwright.packet.words.MemberNames;
import org.standwright.packet.words.SecondStage;
import org.standwright.part.Material;
import org.standwright.unit.Units;

/** What to cut. */
final class CutListSection implements Section<Furniture> {
    @Override
    public void print(Contents<? extends Furniture> contents, Flow flow) {
        flow.freshPage();
        flow.heading("Cut list");
        CutListWords.paragraphs().forEach(flow::paragraph);
        var later = SecondStage.of(contents.furniture());
        if (contents.cutList().lines().stream().anyMatch(later::holds)) {
            flow.paragraph("Lines marked 'stage 2' wait. Cut them when the carcass is glued and its "
                    + "openings are measured: their sizes here are those of the drawing.");
        }
        contents.cutList().sheetLines().stream()
                .map(CutLine::material)
                .distinct()
                .forEach(material -> {
                    flow.heading(material.name() + ", " + contents.units().length(material.thickness()) + " thick");
                    flow.table(table(material, later, contents));
                });
    }

    private static Table table(Material material, SecondStage later, Contents<?> contents) {
        var rows = contents.cutList().sheetLines().stream()
                .filter(line -> line.material().equals(material))
                .map(line -> row(line, later, contents.units()))
                .toList();
        return new Table(
                List.of(
                        Column.words("Label"),
                        Column.words("Part"),
                        Column.figures("Count"),
                        Column.figures("Rough blank"),
                        Column.prose("Notes")),
                rows);
    }

    private static List<String> row(CutLine line, SecondStage later, Units units) {
        return List.of(
                line.label(),
                line.part().name(),
                String.valueOf(line.count()),
                sizes(new BlankSizes(line.part(), units)),
                notes(line, later).collect(Collectors.joining("\n")));
    }

    /** The rough blank, and the sizes that differ from the one before them. */
    private static String sizes(BlankSizes sizes) {
        return sizes.rough()
                + (sizes.isTrimmed() ? "\ncut size\n" + sizes.cut() : "")
                + (sizes.isBanded() ? "\nfinished size\n" + sizes.finished() : "");
    }

    private static Stream<String> notes(CutLine line, SecondStage later) {
        var stage = later.holds(line) ? Stream.of(SecondStage.MARK) : Stream.<String>empty();
        return Stream.of(stage, uses(line), line.notes().stream()).flatMap(Function.identity());
    }

    /** Which parts of the furniture it is, where its name alone does not say so. */
    private static Stream<String> uses(CutLine line) {
        return line.members().equals(List.of(line.part().name()))
                ? Stream.empty()
                : Stream.of("for " + MemberNames.of(line));
    }
}
