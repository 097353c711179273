package org.standwright.design.door;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/**
 * A butt hinge on an inset door. Both leaves lie in the gap beside the door, the pin before the fronts, so that the door
 * swings clear of its upright. The carcass is not cut: one leaf lies on the upright's inner face, and what the gap does
 * not take of the two leaves is let into the door's edge. A gap wider than both leaves is packed out.
 *
 * <p>Screws in the door's edge are not rated; those in the upright go into its face.
 */
record ButtMount(StandDesign design, Hinge.Butt hinge) implements HingeMount {
    @Override
    public List<Feature> inDoor(Part blank, Side hung, double height) {
        boolean left = hung == Side.LEFT;
        double letIn = letIn();
        var features = new ArrayList<Feature>();
        if (Grid.less(0, letIn)) {
            features.add(mortise(blank, left, height, letIn));
        }
        double z = blank.thickness() - hinge.leaf() / 2;
        double pilot = design.screws().panel().pilot();
        double depth = letIn + screw() - hinge.thickness();
        for (double above : screwsAbove()) {
            features.add(
                    new EdgeHole(left ? Edge.Y1 : Edge.Y0, height + above, z, pilot, depth, "hinge pilot (not rated)"));
        }
        return features;
    }

    /** Open at the door's edge and at its face. */
    private Pocket mortise(Part blank, boolean left, double height, double letIn) {
        double y0 = left ? blank.width() - letIn : 0;
        var area = new Rect(height - hinge.length() / 2, y0, height + hinge.length() / 2, y0 + letIn);
        var purpose = "mortise for a hinge";
        return Grid.less(hinge.leaf(), blank.thickness())
                ? Pocket.blind(Face.SHOW, area, 0, hinge.leaf(), purpose)
                : Pocket.through(area, 0, purpose);
    }

    /** What the gap does not take of both leaves, mm. */
    double letIn() {
        return Math.max(0, 2 * hinge.thickness() - design.drawers().gap());
    }

    /** Length of the screws in the door's edge, as in an upright of which only one face is screwed, mm. */
    double screw() {
        return screw(false);
    }

    /**
     * Length of the screws in an upright, mm.
     *
     * @param shared whether something comes to meet them from its far face
     */
    double screw(boolean shared) {
        double upright = design.carcass().sheet().material().thickness();
        return new ScrewChoice(design).butt(hinge.thickness(), upright, shared);
    }

    @Override
    public double screwsBehindEdge() {
        return hinge.leaf() / 2;
    }

    /** Evenly along the leaf. */
    @Override
    public List<Double> screwsAbove() {
        double pitch = hinge.length() / hinge.screws();
        return IntStream.range(0, hinge.screws())
                .mapToObj(i -> (i + 0.5) * pitch - hinge.length() / 2)
                .toList();
    }

    @Override
    public String purpose() {
        return "hinge pilot";
    }
}
