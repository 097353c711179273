package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.design.built.Furniture;
import org.standwright.design.kit.Bar;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.BarsToBuy;
import org.standwright.packet.words.MemberNames;
import org.standwright.packet.words.ProofWords;
import org.standwright.packet.words.SecondStage;
import org.standwright.sheet.bar.BarPlan;
import org.standwright.unit.Units;

/** What to cut from bars. */
final class BarSection implements Section<Furniture> {
    @Override
    public void print(Contents<? extends Furniture> contents, Flow flow) {
        var bars = BarsToBuy.of(contents.design(), contents.cutList());
        if (bars.isEmpty()) {
            return;
        }
        flow.heading("Bar stock");
        bars.forEach(bar -> print(bar, contents, flow));
    }

    private static void print(BarsToBuy bars, Contents<?> contents, Flow flow) {
        var units = contents.units();
        var section = bars.run().section();
        flow.lead(section.name() + ", section " + units.bareLength(bars.width()) + " × "
                + units.length(section.thickness()) + ": " + bars.run().count() + " pieces, together "
                + units.run(bars.length()) + " with a cut of " + contents.exact(bars.kerf()) + " for each.");
        var later = SecondStage.of(contents.furniture());
        flow.table(new Table(
                List.of(
                        Column.words("Label"),
                        Column.words("Part"),
                        Column.figures("Count"),
                        Column.figures("Length"),
                        Column.prose("Notes")),
                bars.run().lines().stream().map(line -> row(line, later, units)).toList()));
        bars.bar().ifPresent(bar -> bars.barPlan().ifPresent(plan -> flow.paragraph(words(bar, plan, units))));
    }

    private static String words(Bar bar, BarPlan plan, Units units) {
        var cut = new ArrayList<String>();
        plan.bars().forEach(each -> cut.add("bar " + (cut.size() + 1) + ": " + String.join(", ", each.pieces())));
        return "From bars of " + units.length(bar.length()) + ", " + cut.size() + " to buy ("
                + ProofWords.ofBars(plan.proof()) + "): " + String.join("; ", cut) + ".";
    }

    private static List<String> row(CutLine line, SecondStage later, Units units) {
        var stage = later.holds(line) ? Stream.of(SecondStage.MARK) : Stream.<String>empty();
        var notes =
                Stream.concat(stage, Stream.concat(Stream.of("for " + MemberNames.of(line)), line.notes().stream()));
        return List.of(
                line.label(),
                line.part().name(),
                String.valueOf(line.count()),
                units.bareLength(line.part().roughLength()),
                notes.collect(Collectors.joining("\n")));
    }
}
