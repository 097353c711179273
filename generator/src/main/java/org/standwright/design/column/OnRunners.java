package org.standwright.design.column;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Slide;

/**
 * Drawers on wooden runners: a bar at each side under the box, its width standing out from the upright, its thickness
 * upright. What keeps the box from tipping is the runner of the drawer above or, where there is none, a kicker of the
 * same bar; a short piece of it behind the box is the stop.
 *
 * <p>Play: 1 mm a side and 1.5 mm in height (shop practice); the other figures are common practice, no source.
 */
public record OnRunners(StandDesign design, Bar bar) implements Running {
    /** Between box and upright. */
    public static final double SIDE_PLAY = 1;
    /** Between the box and what lies above it. */
    public static final double HEIGHT_PLAY = 1.5;
    /** Length of a stop. */
    public static final double STOP = 25;
    /** Runners end this far before the back. */
    public static final double BEFORE_BACK = 1;

    private static final double SET_BACK = 2;
    /** Between the stop and a box whose overlay front stops at the carcass. */
    private static final double BEHIND_OVERLAY = 1;
    /** The shortest box that does not jam. */
    private static final double LEAST_DEPTH = 150;
    /** Least height of a box over its bottom. */
    private static final double LEAST_INSIDE = 30;

    @Override
    public String name() {
        return bar.name();
    }

    @Override
    public double sideSpace() {
        return SIDE_PLAY;
    }

    /** The runner lies on the cell's lower edge. */
    @Override
    public double below() {
        return bar.thickness();
    }

    /** The kicker hangs within the cell; a runner above lies beyond the gap between the fronts. */
    @Override
    public double above(boolean top) {
        return HEIGHT_PLAY + (top ? bar.thickness() : -design.drawers().gap());
    }

    @Override
    public double free(boolean top) {
        return top ? 0 : above(false);
    }

    @Override
    public double leastBox() {
        var heights = new BoxHeights(design);
        double overBottom = BoxHeights.GROOVE_ABOVE_EDGE + heights.grooveWidth() + LEAST_INSIDE;
        return Exact.onTapeUp(design.unit(), Math.max(overBottom, bar.thickness()));
    }

    /** Not to the mark of a tape: what is lost there would be play. */
    @Override
    public double boxHeight(double cell, boolean top) {
        return cell - below() - above(top);
    }

    @Override
    public double setBack() {
        return SET_BACK;
    }

    @Override
    public double leastRoom() {
        return LEAST_DEPTH + behindBox();
    }

    @Override
    public double boxDepth(double room) {
        return Exact.onTapeDown(design.unit(), room - behindBox());
    }

    @Override
    public Optional<Slide.Size> slide(double room) {
        return Optional.empty();
    }

    @Override
    public OptionalDouble slideLine() {
        return OptionalDouble.empty();
    }

    @Override
    public double frontScrew() {
        return new BoxHeights(design).overGroove();
    }

    @Override
    public OptionalDouble rating() {
        return OptionalDouble.empty();
    }

    @Override
    public boolean holdsClosed() {
        return false;
    }

    /** From the box to its stop: an overlay front stops at the carcass first, an inset front at nothing else. */
    public double beforeStop() {
        return design.drawers().mount() == Mount.OVERLAY ? BEHIND_OVERLAY : 0;
    }

    private double behindBox() {
        return beforeStop() + STOP + BEFORE_BACK;
    }
}
