package org.standwright.design.column;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.Hang;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Slide;

/**
 * What a stand's drawers run on, as far as the drawers ask: the space it takes around a box.
 *
 * <p>All lengths in mm. A cell is a drawer's share of its opening's height; the room is the depth from the back of an
 * inset front, or from the carcass's front edge, to the inside of the back.
 */
public sealed interface Running permits OnSlides, OnRunners {
    static Running of(StandDesign design) {
        return design.drawers().hang() instanceof Hang.Runners runners
                ? new OnRunners(design, runners.bar())
                : new OnSlides(design, ((Hang.Slides) design.drawers().hang()).slide());
    }

    /** As a maker calls it on a list: the slide's name, or the bar's. */
    String name();

    /** Between the box and the opening, at each side. */
    double sideSpace();

    /** From the cell's lower edge up to the box. */
    double below();

    /**
     * From the box up to the cell's upper edge; less than 0 where the box may stand higher.
     *
     * @param top whether no other drawer stands right above this one
     */
    double above(boolean top);

    /**
     * From the highest thing in the cell, the box or a kicker over it, up to the cell's upper edge.
     *
     * @param top whether no other drawer stands right above this one
     */
    double free(boolean top);

    /** Least height of a box. */
    double leastBox();

    /** Height of the box that leaves these spaces free in its cell. */
    double boxHeight(double cell, boolean top);

    /** Front end of slide or runner, behind the front of the room. */
    double setBack();

    /** The least room that takes a drawer. */
    double leastRoom();

    /** Length of the longest box in a room of at least {@link #leastRoom}. */
    double boxDepth(double room);

    /** The slide for such a room, if drawers run on slides. */
    Optional<Slide.Size> slide(double room);

    /** Centre of the slide above the box's lower edge, if drawers run on slides: one for all, so one story stick serves. */
    OptionalDouble slideLine();

    /** Lowest height above the box's lower edge at which a screw of its front may sit. */
    double frontScrew();

    /** Permitted mass of a loaded drawer, kg, where its maker states one. */
    OptionalDouble rating();

    /** Whether a closed drawer is held closed. */
    boolean holdsClosed();
}
