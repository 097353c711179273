package org.standwright.part;

import java.util.Locale;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Refuses a feature that leaves its blank or cuts deeper than the board is thick. */
final class WithinBlank implements FeatureVisitor<Void> {
    private final String part;
    private final double length;
    private final double width;
    private final double thickness;

    WithinBlank(String part, double length, double width, double thickness) {
        this.part = part;
        this.length = length;
        this.width = width;
        this.thickness = thickness;
    }

    @Override
    public Void channel(Channel channel) {
        within("channel", channel.area());
        shallow("channel", channel.depth());
        return null;
    }

    @Override
    public Void hole(Hole hole) {
        within(hole.purpose(), hole.area());
        hole.depth().ifPresent(depth -> shallow(hole.purpose(), depth));
        hole.recess().ifPresent(recess -> {
            double depth = recess.depth(hole.diameter());
            if (!Grid.less(depth, hole.depthIn(thickness))) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "recess of %s of '%s' is %.3f mm deep in a hole of %.3f mm; it must stay shallower.",
                        hole.purpose(),
                        part,
                        depth,
                        hole.depthIn(thickness)));
            }
        });
        return null;
    }

    @Override
    public Void pocket(Pocket pocket) {
        within(pocket.purpose(), pocket.area());
        pocket.depth().ifPresent(depth -> shallow(pocket.purpose(), depth));
        return null;
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        ends(hole);
        within(hole.purpose(), hole.area(length, width));
        double r = hole.diameter() / 2;
        if (Grid.less(hole.z() - r, 0) || Grid.less(thickness, hole.z() + r)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s of '%s' reaches from z %.3f to %.3f mm, out of its board of %.3f mm.",
                    hole.purpose(),
                    part,
                    hole.z() - r,
                    hole.z() + r,
                    thickness));
        }
        return null;
    }

    @Override
    public Void bevel(Bevel bevel) {
        within("bevel", bevel.area(length, width));
        if (Grid.less(thickness, bevel.depth())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "bevel of '%s' is %.3f mm deep in a board of %.3f mm; it can be no deeper.",
                    part,
                    bevel.depth(),
                    thickness));
        }
        return null;
    }

    @Override
    public Void contour(Contour contour) {
        within(contour.purpose(), contour.outline().bounds());
        return null;
    }

    private void ends(EdgeHole hole) {
        double reach = hole.edge().isEnd() ? length : width;
        if (Grid.less(reach, hole.depth())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s of '%s' is %.3f mm deep in a board that reaches %.3f mm that way; it can be no deeper.",
                    hole.purpose(),
                    part,
                    hole.depth(),
                    reach));
        }
    }

    private void within(String what, Rect area) {
        if (Grid.less(area.x0(), 0)
                || Grid.less(area.y0(), 0)
                || Grid.less(length, area.x1())
                || Grid.less(width, area.y1())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s of '%s' reaches from (%.3f, %.3f) to (%.3f, %.3f) mm, outside its blank of %.3f x %.3f mm.",
                    what,
                    part,
                    area.x0(),
                    area.y0(),
                    area.x1(),
                    area.y1(),
                    length,
                    width));
        }
    }

    private void shallow(String what, double depth) {
        if (!Grid.less(depth, thickness)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s of '%s' is %.3f mm deep in a board of %.3f mm; it must stay shallower or go right through.",
                    what,
                    part,
                    depth,
                    thickness));
        }
    }
}
