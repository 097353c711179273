package org.standwright.design.door;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.design.Content;
import org.standwright.design.Hung;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.column.FrontReach;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.geom.Grid;

/** Whether concealed hinges are made for the lap of their doors over the uprights that they hang on. */
final class HingeLap {
    /** How far a hinge adjusts a door to either side, mm; common practice, no source. */
    static final double ADJUSTMENT = 3;

    private final StandDesign design;
    private final FrontReach reach;

    HingeLap(StandDesign design) {
        this.design = design;
        this.reach = new FrontReach(design);
    }

    /**
     * @param field JSON pointer of the hinge
     * @param outer whether the uprights to the left and to the right of the bay are sides of the carcass
     */
    void check(String field, Content.Door door, Hinge.Concealed hinge, Outer outer) {
        for (var side : sides(door.hung())) {
            double lap = lap(side, outer);
            if (!fits(hinge, lap)) {
                throw new ImpossibleDesignException(field, reason(hinge, side, lap), ways(door, outer));
            }
        }
    }

    private boolean fits(Hinge.Concealed hinge, double lap) {
        double off = Math.abs(Math.max(0, lap) - hinge.overlay());
        return !Grid.less(isInset() ? 0 : ADJUSTMENT, off);
    }

    private String reason(Hinge.Concealed hinge, Side side, double lap) {
        var made = hinge.name() + " is made for an overlay of " + shown(hinge.overlay());
        return isInset()
                ? made + ", but the door stands between the uprights; that takes an overlay of " + shown(0) + "."
                : made + ", give or take " + shown(ADJUSTMENT) + ", but the door laps its "
                        + side.name().toLowerCase(Locale.ROOT) + " upright by " + shown(lap) + ".";
    }

    private List<String> ways(Content.Door door, Outer outer) {
        var ways = new ArrayList<String>();
        double left = Math.max(0, lap(Side.LEFT, outer));
        double right = Math.max(0, lap(Side.RIGHT, outer));
        if (door.hung() != Hung.PAIR) {
            ways.add("Use a hinge for an overlay of " + shown(door.hung() == Hung.LEFT ? left : right) + ".");
        } else if (!Grid.less(ADJUSTMENT, Math.abs(left - right) / 2)) {
            ways.add("Use a hinge for an overlay of " + shown((left + right) / 2) + ".");
        } else {
            ways.add("Hang one door on the left with a hinge for an overlay of " + shown(left)
                    + ", or on the right with one for " + shown(right) + ": a pair has the same hinge on both sides.");
        }
        if (!isInset()) {
            ways.add("Or make the fronts \"inset\", with a hinge for an overlay of " + shown(0) + ".");
        }
        return ways;
    }

    private static List<Side> sides(Hung hung) {
        return switch (hung) {
            case LEFT -> List.of(Side.LEFT);
            case RIGHT -> List.of(Side.RIGHT);
            case PAIR -> List.of(Side.LEFT, Side.RIGHT);
        };
    }

    private double lap(Side side, Outer outer) {
        return reach.lap(side == Side.LEFT ? outer.left() : outer.right());
    }

    private boolean isInset() {
        return design.drawers().mount() == Mount.INSET;
    }

    private String shown(double mm) {
        return design.unit().length(mm);
    }

    /** Which uprights beside a bay are sides of the carcass; the others are partitions. */
    record Outer(boolean left, boolean right) {
        Outer across(int bay, int bays) {
            return new Outer(left && bay == 0, right && bay == bays - 1);
        }
    }
}
