package org.standwright.design.wall.built;

import java.util.List;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.area.BareArea;
import org.standwright.design.wall.area.Zone;
import org.standwright.geom.Outline;

/**
 * One wall with its rows.
 *
 * @param number from the left, 1 for the first
 * @param notes what was made of its obstacles that its maker should know, such as two that overlap
 * @param shortRuns where a row leaves bare wall out
 */
public record CleatedWall(
        int number,
        Wall wall,
        Outline outline,
        WallFrame frame,
        List<Zone> zones,
        BareArea bare,
        List<Stud> studs,
        List<Row> rows,
        List<ShortRun> shortRuns,
        List<String> notes) {
    public CleatedWall {
        zones = List.copyOf(zones);
        studs = List.copyOf(studs);
        rows = List.copyOf(rows);
        shortRuns = List.copyOf(shortRuns);
        notes = List.copyOf(notes);
    }

    /** All its strips, row by row from the lowest. */
    public List<Strip> strips() {
        return rows.stream().flatMap(row -> row.strips().stream()).toList();
    }
}
