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
        OptionalDouble rounding) {}
