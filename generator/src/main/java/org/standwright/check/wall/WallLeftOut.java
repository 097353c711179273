package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.wall.Things.Use;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Unplaced;

/** What did not get a place: bare wall without strips, and holders that hang nowhere. */
public final class WallLeftOut implements Rule<HungWall> {
    private static final RuleText TEXT =
            RuleText.plain("wall-left-out", "What is left out?", "the design and its walls");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var findings = new ArrayList<Finding>();
        wall.wall().unplaced().forEach(left -> findings.add(notHung(left)));
        wall.wall().walls().forEach(cleated -> about(wall, cleated, findings));
        return findings;
    }

    /** What was not used for a year hangs nowhere because its maker said so. */
    private static Finding notHung(Unplaced left) {
        var words = "It hangs nowhere: " + left.why();
        var name = left.holder().name();
        return left.holder().things().use() == Use.UNUSED
                ? Finding.note(TEXT, name, words)
                : Finding.caution(TEXT, name, words);
    }

    private static void about(HungWall wall, CleatedWall cleated, List<Finding> findings) {
        var units = wall.units();
        var runs = cleated.shortRuns().stream()
                .map(run ->
                        "Row " + run.row() + ", " + units.bareLength(run.along().from()) + " to "
                                + units.length(run.along().to()) + ": " + sentence(run.why()));
        var words = Stream.concat(cleated.notes().stream(), runs).collect(Collectors.joining(" "));
        if (!words.isEmpty()) {
            findings.add(Finding.note(TEXT, cleated.wall().name(), words));
        }
    }

    private static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }
}
