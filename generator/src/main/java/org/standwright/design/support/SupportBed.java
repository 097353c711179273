package org.standwright.design.support;

import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.frame.Frame;
import org.standwright.part.Hole;

/** The two layers of wood below the carcass's bottom that casters and levelers are fixed to. */
sealed interface SupportBed permits BlockStrips, DoubledBottom {
    /** To leave between the recesses at the front and those at the rear, for the screws from the bottom, mm. */
    double FOR_SCREWS = 80;

    Layers layers();

    /** The layers under a carcass, bored for what is fixed to them; the fixings in the assembly's x and y. */
    List<PlacedPart> parts(Frame frame, List<Fixing> fixings);

    /** Holes in the carcass's bottom through which they are screwed on from inside, in the assembly's x and y. */
    List<Hole> bottomHoles(Frame frame, List<Fixing> fixings);

    /** The narrowest plan they go under, mm. */
    double leastWidth();

    /**
     * The bed that a maker chose.
     *
     * @param item what is fixed to it: 'caster'
     * @param strip width of the wood that the item takes along each side of the plan, mm
     */
    static SupportBed of(Support.Bed bed, String item, double strip, StandDesign design) {
        return switch (bed) {
            case STRIPS -> new BlockStrips(new Layers(item + " block", item + " blocks", design), strip);
            case DOUBLED_BOTTOM -> new DoubledBottom(new Layers("doubled bottom", "doubled bottom", design), strip);
        };
    }
}
