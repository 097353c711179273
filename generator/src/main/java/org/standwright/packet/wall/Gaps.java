package org.standwright.packet.wall;

import java.util.TreeMap;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Row;
import org.standwright.unit.Units;

/** What stays free between strips of a row that are screwed to neighbouring studs. */
final class Gaps {
    private Gaps() {}

    /** A sentence with a blank before it; nothing where no strips meet. */
    static String words(CleatedWall wall, Units units) {
        var widths = new TreeMap<Double, String>();
        wall.rows().forEach(row -> gaps(wall, row, units, widths));
        if (widths.isEmpty()) {
            return "";
        }
        var least = widths.firstEntry().getValue();
        var most = widths.lastEntry().getValue();
        return " Where two strips of a row meet, "
                + (least.equals(most) ? least : least + " to " + most)
                + " of wall stays free between them: an end stands out no farther beyond its last screw than a quarter "
                + "of the way to the next one.";
    }

    private static void gaps(CleatedWall wall, Row row, Units units, TreeMap<Double, String> widths) {
        for (int i = 1; i < row.strips().size(); i++) {
            var left = row.strips().get(i - 1);
            var right = row.strips().get(i);
            double from = left.studs().get(left.studs().size() - 1);
            double to = right.studs().get(0);
            boolean meet = wall.studs().stream().noneMatch(stud -> stud.x() > from && stud.x() < to);
            if (meet) {
                double gap = right.along().from() - left.along().to();
                widths.put(gap, units.length(gap));
            }
        }
    }
}
