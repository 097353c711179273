package org.standwright.solid;

import java.util.Arrays;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.solid.layer.Ring;

/**
 * A pocket seen from above, on the grid. Where a side of it lies on an edge of the blank it runs on beyond, so that the
 * tool has no wall in the blank's; the other corners are rounded. An arc's chords begin and end where the sides do and
 * take the area of the arc.
 */
final class PocketOutline {
    private final Pocket pocket;
    private final Part part;
    private final Fineness fineness;
    private int[] uv = new int[64];
    private int count;

    private PocketOutline(Pocket pocket, Part part, Fineness fineness) {
        this.pocket = pocket;
        this.part = part;
        this.fineness = fineness;
    }

    static Ring of(Pocket pocket, Part part, Fineness fineness) {
        var outline = new PocketOutline(pocket, part, fineness);
        for (int i = 0; i < pocket.outline().corners().size(); i++) {
            outline.corner(i);
        }
        return Ring.tidy(Arrays.copyOf(outline.uv, 2 * outline.count));
    }

    private void corner(int i) {
        var at = pocket.outline().corner(i);
        var before = outwards(pocket.outline().corner(i - 1), at);
        var after = outwards(at, pocket.outline().corner(i + 1));
        boolean opensBefore = before.length() > 0;
        boolean opensAfter = after.length() > 0;
        if (opensBefore && opensAfter) {
            add(at, before.minus(after).length() == 0 ? before : before.plus(after));
        } else if (opensBefore) {
            add(at, before);
            add(at, Vec2.ZERO);
        } else if (opensAfter) {
            add(at, Vec2.ZERO);
            add(at, after);
        } else if (pocket.rounding(i) > 0) {
            arc(i, at);
        } else {
            add(at, Vec2.ZERO);
        }
    }

    /** Which way the blank's edge faces that a side lies on; nowhere if it lies on none. */
    private Vec2 outwards(Vec2 a, Vec2 b) {
        double length = part.length();
        double width = part.width();
        if (Grid.same(a.x(), b.x()) && (Grid.same(a.x(), 0) || Grid.same(a.x(), length))) {
            return new Vec2(Grid.same(a.x(), 0) ? -1 : 1, 0);
        }
        if (Grid.same(a.y(), b.y()) && (Grid.same(a.y(), 0) || Grid.same(a.y(), width))) {
            return new Vec2(0, Grid.same(a.y(), 0) ? -1 : 1);
        }
        return Vec2.ZERO;
    }

    private void arc(int i, Vec2 at) {
        double r = pocket.radius();
        var on = unit(pocket.outline().corner(i + 1).minus(at));
        var back = unit(pocket.outline().corner(i - 1).minus(at));
        var centre = at.plus(back.times(pocket.rounding(i))).plus(new Vec2(back.y(), -back.x()).times(r));
        double turn = Math.PI - StrictMath.atan2(on.cross(back), on.x() * back.x() + on.y() * back.y());
        double start = StrictMath.atan2(
                at.y() + back.y() * pocket.rounding(i) - centre.y(),
                at.x() + back.x() * pocket.rounding(i) - centre.x());
        int chords = fineness.chords(r, turn);
        double inner = Fineness.arcRadius(r, turn, chords);
        for (int k = 0; k <= chords; k++) {
            double reach = k == 0 || k == chords ? r : inner;
            double angle = start + turn * k / chords;
            add(centre.plus(new Vec2(StrictMath.cos(angle), StrictMath.sin(angle)).times(reach)), Vec2.ZERO);
        }
    }

    private static Vec2 unit(Vec2 v) {
        return v.times(1 / v.length());
    }

    private void add(Vec2 at, Vec2 beyond) {
        if (2 * count + 2 > uv.length) {
            uv = Arrays.copyOf(uv, 2 * uv.length);
        }
        uv[2 * count] = snap(at.x()) + (int) beyond.x() * Tools.OVERSHOOT;
        uv[2 * count + 1] = snap(at.y()) + (int) beyond.y() * Tools.OVERSHOOT;
        count++;
    }

    private int snap(double mm) {
        return Solid.units("coordinate", mm, part.name());
    }
}
