package org.standwright.design.wall.place;

import java.util.List;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.Row;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/** Where the lower backs of holders on one wall find the wall. Heights are above the floor, mm. */
record Backings(List<Row> rows, Cleat cleat) {
    /** Height of a spacer, mm (common practice, no source). */
    static final double SPACER = 40;

    /** How much of a lower strip's height the back must lie on, mm (common practice, no source). */
    static final double LEAST = 10;

    Backing of(ToHang holder, int row, double x) {
        double height = rows.get(row).height();
        double bottom = height + holder.made().back().y0();
        var back = new Interval(x + holder.hangerFrom(), x + holder.hangerFrom() + holder.hanger());
        for (var lower : rows.subList(0, row)) {
            double edge = lower.height() - cleat.height();
            double covered = lower.height() - Math.max(bottom, edge);
            if (!Grid.less(covered, LEAST) && !Grid.less(on(lower, back), back.length() / 2)) {
                return new Backing(Backing.By.LOWER_STRIP, height - Math.max(bottom, edge));
            }
        }
        double own = height - cleat.height();
        return hasRoomForSpacer(row, bottom, own, back)
                ? new Backing(Backing.By.SPACER, height - bottom)
                : new Backing(Backing.By.OWN_STRIP, height - Math.max(bottom, own));
    }

    /** In place and lifted it stays below its own strip and clear of all lower ones. */
    private boolean hasRoomForSpacer(int row, double bottom, double own, Interval back) {
        double top = bottom + SPACER + cleat.headroom();
        return !Grid.less(own, top)
                && rows.subList(0, row).stream()
                        .filter(lower ->
                                Grid.less(bottom, lower.height()) && Grid.less(lower.height() - cleat.height(), top))
                        .noneMatch(lower -> Grid.less(0, on(lower, back)));
    }

    private static double on(Row row, Interval back) {
        return row.strips().stream()
                .mapToDouble(strip -> strip.along().overlap(back))
                .sum();
    }
}
