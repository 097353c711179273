package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.BarsToBuy;
import org.standwright.packet.words.MemberNames;
import org.standwright.packet.words.SecondStage;
import org.standwright.unit.Units;

/** What to cut from bars. */
final class BarSection implements Section {
    @Override
    public void print(Contents contents, Flow flow) {
        var bars = BarsToBuy.of(contents.design(), contents.cutList());
        if (bars.isEmpty()) {
            return;
        }
        flow.heading("Bar stock");
        bars.forEach(bar -> print(bar, contents, flow));
    }

    private static void print(BarsToBuy bars, Contents contents, Flow flow) {
        var units = contents.units();
        var section = bars.run().section();
        flow.lead(section.name() + ", section " + units.bareLength(bars.width()) + " × "
                + units.length(section.thickness()) + ": " + bars.run().count() + " pieces, together "
                + units.run(bars.length()) + " with a cut of " + contents.exact(bars.kerf()) + " for each.");
        var later = SecondStage.of(contents.stand());
        flow.table(new Table(
                List.of(
                        Column.words("Label"),
                        Column.words("Part"),
                        Column.figures("Count"),
                        Column.figures("Length"),
                        Column.prose("Notes")),
                bars.run().lines().stream().map(line -> row(line, later, units)).toList()));
        var plan = new ArrayList<String>();
        bars.plan().forEach(labels -> plan.add("bar " + (plan.size() + 1) + ": " + String.join(", ", labels)));
        bars.bar()
                .ifPresent(bar -> flow.paragraph("From bars of " + units.length(bar.length()) + ", "
                        + bars.plan().size() + " to buy: " + String.join("; ", plan) + "."));
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
