package org.standwright.design;

import java.util.OptionalDouble;
import org.standwright.part.SheetGood;

/**
 * How all drawers and doors are made.
 *
 * @param box sheet of the box's sides, front and back
 * @param front sheet of drawer fronts and doors
 * @param gap around fronts, mm
 * @param bumper thickness of the bumpers between an overlay front and the carcass, mm
 * @param frontGrain of drawer fronts
 * @param matched whether the fronts of a bay come from one strip, so that the figure runs on from top to bottom
 * @param rounding of heights that are worked out, mm; without it, to the tape's mark; what remains goes to the lowest
 */
public record DrawerPlan(
        SheetGood box,
        SheetGood bottom,
        SheetGood front,
        Hang hang,
        Mount mount,
        double gap,
        double bumper,
        Grip grip,
        FrontGrain frontGrain,
        boolean matched,
        OptionalDouble rounding) {
    /** With level fronts, each by itself. */
    public DrawerPlan(
            SheetGood box,
            SheetGood bottom,
            SheetGood front,
            Hang hang,
            Mount mount,
            double gap,
            double bumper,
            Grip grip,
            OptionalDouble rounding) {
        this(box, bottom, front, hang, mount, gap, bumper, grip, FrontGrain.LEVEL, false, rounding);
    }

    /** The same drawers of other sheets. */
    public DrawerPlan of(SheetGood otherBox, SheetGood otherBottom, SheetGood otherFront) {
        return new DrawerPlan(
                otherBox, otherBottom, otherFront, hang, mount, gap, bumper, grip, frontGrain, matched, rounding);
    }
}
