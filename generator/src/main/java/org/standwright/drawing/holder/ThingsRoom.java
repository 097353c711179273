package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.figure.Sight;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;

/** The room that a holder's things take up, fingers included; of one that is much larger than the boards, the part near them. */
record ThingsRoom(EqualHolders holder, Sight sight) {
    /** Shown above and below the boards at most, and before them, mm. */
    private static final double BEYOND = 40;

    private static final double BEFORE = 150;

    /** Its sides, open where it is broken off. */
    List<Segment> outline() {
        var room = sight.project(holder.made().box());
        var boards = sight.project(holder.box());
        double x0 = Math.max(room.x0(), boards.x0() - BEFORE);
        double x1 = Math.min(room.x1(), boards.x1() + BEFORE);
        double y0 = Math.max(room.y0(), boards.y0() - BEYOND);
        double y1 = Math.min(room.y1(), boards.y1() + BEYOND);
        var sides = new ArrayList<Segment>();
        add(Grid.same(y0, room.y0()), new Vec2(x0, y0), new Vec2(x1, y0), sides);
        add(Grid.same(x1, room.x1()), new Vec2(x1, y0), new Vec2(x1, y1), sides);
        add(Grid.same(y1, room.y1()), new Vec2(x1, y1), new Vec2(x0, y1), sides);
        add(Grid.same(x0, room.x0()), new Vec2(x0, y1), new Vec2(x0, y0), sides);
        return sides;
    }

    private static void add(boolean whole, Vec2 from, Vec2 to, List<Segment> sides) {
        if (whole) {
            sides.add(new Segment(from, to));
        }
    }
}
