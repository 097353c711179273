package org.standwright.design.top;

import java.util.ArrayList;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Places as built in the words of the design file: of a mirrored stand, left and right are changed over there. */
final class Written {
    private final Frame frame;
    private final StandDesign design;
    private final boolean mirrored;

    Written(Frame frame) {
        this.frame = frame;
        this.design = frame.design();
        this.mirrored = design.layout() == Layout.MIRRORED;
    }

    /** From the left edge of the carcass, as a cutout says it. */
    String x(double built) {
        return exact(mirrored ? frame.width() - built : built);
    }

    /** From the left edge of the worktop, as a plate says it. */
    String fromWorktopLeft(double built) {
        var top = WorktopSize.outline(frame);
        return exact(mirrored ? top.x1() - built : built - top.x0());
    }

    /** From the front edge of the worktop, as a plate says it. */
    String fromWorktopFront(double built) {
        return exact(built - WorktopSize.outline(frame).y0());
    }

    String exact(double mm) {
        return Exact.length(design.unit(), mm);
    }

    /** '12 mm to the left', '12 mm to the left and 3 mm to the back'. */
    String way(Point2 shift) {
        var ways = new ArrayList<String>();
        if (!Grid.same(shift.x(), 0)) {
            ways.add(exact(Math.abs(shift.x())) + " to the " + (shift.x() < 0 ? "left" : "right"));
        }
        if (!Grid.same(shift.y(), 0)) {
            ways.add(exact(Math.abs(shift.y())) + " to the " + (shift.y() < 0 ? "front" : "back"));
        }
        return String.join(" and ", ways);
    }

    /** The margins to write so that the base, now over {@code base}, stands shifted: 'left 40 mm'. */
    String margins(Rect base, Point2 shift) {
        var top = WorktopSize.outline(frame);
        var margins = design.place().margins();
        var words = new ArrayList<String>();
        if (!Grid.same(shift.x(), 0)) {
            boolean both = design.plan().width().isEmpty();
            if (both || margins.left().isPresent() || margins.right().isEmpty()) {
                words.add((mirrored ? "right " : "left ") + exact(base.x0() + shift.x() - top.x0()));
            }
            if (both || margins.right().isPresent()) {
                words.add((mirrored ? "left " : "right ") + exact(top.x1() - base.x1() - shift.x()));
            }
        }
        if (!Grid.same(shift.y(), 0)) {
            boolean both = design.plan().depth().isEmpty();
            if (both || margins.front().isPresent() || margins.back().isEmpty()) {
                words.add("front " + exact(base.y0() + shift.y() - top.y0()));
            }
            if (both || margins.back().isPresent()) {
                words.add("back " + exact(top.y1() - base.y1() - shift.y()));
            }
        }
        return String.join(", ", words);
    }
}
