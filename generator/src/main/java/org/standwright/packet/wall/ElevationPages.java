package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.standwright.check.wall.LoadLimits;
import org.standwright.design.wall.HoldWord;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Strip;
import org.standwright.drawing.wall.WallElevation;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.SawWords;
import org.standwright.unit.Units;

/** Each wall on a page of its own, sideways, and then where each of its strips begins and is screwed. */
final class ElevationPages implements WallPages.Page {
    /** Kept free below the figure, mm. */
    private static final double BELOW = 0.5;

    @Override
    public void print(WallPaper paper, Flow flow) {
        for (var wall : paper.walls().walls()) {
            flow.freshPage(flow.sideways());
            flow.heading("Wall '" + wall.wall().name() + "'");
            flow.lead(new Amounts(wall, paper.units()).sentence());
            flow.figure(WallElevation.of(
                    paper.walls(), wall, paper.labels(), flow.width(), flow.left() - BELOW, flow.measure()));
        }
        flow.freshPage();
        if (!paper.labels().limits().isEmpty()) {
            flow.lead("Limits on the drawings: " + LoadLimits.MEANING);
        }
        paper.walls().walls().stream()
                .filter(wall -> !wall.strips().isEmpty())
                .forEach(wall -> strips(wall, paper, flow));
    }

    private static void strips(CleatedWall wall, WallPaper paper, Flow flow) {
        var units = paper.units();
        flow.heading("Strips on '" + wall.wall().name() + "'");
        flow.lead("Left end from the left end of the wall; screws from the left end of the strip, " + heights(paper)
                + " above its lower edge." + Gaps.words(wall, units));
        var rows = new ArrayList<List<String>>();
        for (var row : wall.rows()) {
            for (var strip : row.strips()) {
                rows.add(List.of(
                        row.number() + "." + (row.strips().indexOf(strip) + 1),
                        strip.label(),
                        units.bareLength(strip.along().from()),
                        units.bareLength(strip.along().length()),
                        screws(strip, units),
                        studs(strip, wall)));
            }
        }
        flow.table(new Table(
                List.of(
                        Column.figures("Strip"),
                        Column.words("Label"),
                        Column.figures("Left end at"),
                        Column.figures("Length"),
                        Column.prose("Screws at"),
                        Column.words(studs(wall))),
                rows));
    }

    /** 'Studs'. */
    private static String studs(CleatedWall wall) {
        var words = HoldWord.of(wall.wall().framing()).many();
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** '45 mm', '22 and 67 mm'. */
    private static String heights(WallPaper paper) {
        return paper.walls().screwing().heights().stream().map(paper::exact).collect(Collectors.joining(" and "));
    }

    private static String screws(Strip strip, Units units) {
        return String.join(
                ", ",
                strip.studs().stream()
                        .map(stud -> units.bareLength(stud - strip.along().from()))
                        .toList());
    }

    private static String studs(Strip strip, CleatedWall wall) {
        var numbers = wall.studs().stream()
                .filter(stud -> strip.studs().contains(stud.x()))
                .map(stud -> stud.number())
                .toList();
        return SawWords.runs(numbers);
    }
}
