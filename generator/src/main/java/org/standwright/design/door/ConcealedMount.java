package org.standwright.design.door;

import java.util.List;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * A concealed hinge: its cup in the door's inner face, its plate on the upright by two screws, one above the other.
 *
 * <p>Plates sit on the line of the 32 mm system, usually 37 mm behind the front edge, behind an inset door by the door's
 * thickness more (references 7.2: guides to the 32 mm system).
 */
record ConcealedMount(StandDesign design, Hinge.Concealed hinge) implements HingeMount {
    static final String CUP = "hinge cup";

    @Override
    public List<Feature> inDoor(Part blank, Side hung, double height) {
        double y = hung == Side.LEFT ? blank.width() - hinge.cupFromEdge() : hinge.cupFromEdge();
        return List.of(Hole.blind(Face.BENCH, height, y, hinge.cup(), hinge.cupDepth(), CUP));
    }

    @Override
    public double screwsBehindEdge() {
        return behindEdge() + hinge.plateSetBack();
    }

    @Override
    public List<Double> screwsAbove() {
        return List.of(-hinge.plateSpacing() / 2, hinge.plateSpacing() / 2);
    }

    @Override
    public String purpose() {
        return "hinge plate pilot";
    }

    /** Where the room for arm and plate begins behind the carcass's front edge, mm. */
    double behindEdge() {
        return design.drawers().mount() == Mount.INSET
                ? design.drawers().front().material().thickness()
                : 0;
    }
}
