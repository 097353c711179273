package org.standwright.design.door;

import java.util.List;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.part.Feature;
import org.standwright.part.Part;

/** How one kind of hinge is let into its door and screwed to its upright. */
sealed interface HingeMount permits ConcealedMount, ButtMount {
    static HingeMount of(StandDesign design, Hinge hinge) {
        return hinge instanceof Hinge.Concealed concealed
                ? new ConcealedMount(design, concealed)
                : new ButtMount(design, (Hinge.Butt) hinge);
    }

    /**
     * What is machined into the door.
     *
     * @param blank in its part frame: x upwards, y to the left, its bench face the inner one
     * @param hung the side of the hinges
     * @param height of the hinge above the door's lower edge, mm
     */
    List<Feature> inDoor(Part blank, Side hung, double height);

    /** Screws in the upright: how far behind the front edge of the carcass, mm. */
    double screwsBehindEdge();

    /** Screws in the upright: how far above the middle of the hinge, mm. */
    List<Double> screwsAbove();

    /** What the screws in the upright are for. */
    String purpose();
}
