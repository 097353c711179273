package org.standwright.design.wall.place;

import org.standwright.design.wall.Things.Use;
import org.standwright.design.wall.built.Unplaced;
import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/** Says why a holder found no place: the first of what would keep it from one, from strips to neighbours. */
final class WhyNot {
    private final EmptyWalls empty;
    private final Units unit;

    WhyNot(EmptyWalls empty, Units unit) {
        this.empty = empty;
        this.unit = unit;
    }

    Unplaced of(ToHang holder) {
        return new Unplaced(holder.made().holder(), reason(holder));
    }

    private String reason(ToHang holder) {
        if (holder.use() == Use.UNUSED) {
            return "not used for a year: it loses its place; sell it, give it away or store it elsewhere.";
        }
        if (!any((wall, row) -> !empty.runs(wall, row).supports(holder.hanger()).isEmpty())) {
            return "its hanger is " + unit.length(holder.hanger())
                    + " long, wider than any run of strips bears; the longest run is " + unit.length(longest())
                    + ". Make it narrower.";
        }
        if (!any((wall, row) -> !empty.places(holder, wall, row).isEmpty())) {
            return clear(holder) + " clear of obstacles"
                    + (holder.isFlammable() ? ", and not above a stand, where nothing flammable hangs." : ".");
        }
        return clear(holder) + " left free by the other holders. Make room, or put it on another wall.";
    }

    private String clear(ToHang holder) {
        double height = holder.box().size().z() + holder.lift();
        return "no run has " + unit.length(holder.width()) + " where " + unit.length(height)
                + " with the room to lift it off are";
    }

    private double longest() {
        double longest = 0;
        for (int wall = 0; wall < empty.walls().size(); wall++) {
            for (int row = 0; row < empty.walls().get(wall).rows().size(); row++) {
                longest = Math.max(longest, empty.runs(wall, row).longest());
            }
        }
        return Grid.less(0, longest) ? longest : 0;
    }

    private interface OfRow {
        boolean test(int wall, int row);
    }

    private boolean any(OfRow rule) {
        for (int wall = 0; wall < empty.walls().size(); wall++) {
            for (int row = 0; row < empty.walls().get(wall).rows().size(); row++) {
                if (rule.test(wall, row)) {
                    return true;
                }
            }
        }
        return false;
    }
}
