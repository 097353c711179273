package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Cutout;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Axis;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;

/** Cuts bolt holes, cut-outs and the plate's place into the finished worktop, sub-top and back. */
final class TopCuts {
    /** Wood left under a pilot hole in the ledge, mm. */
    private static final double UNDER_PILOT = 2;

    private final Frame frame;
    private final Optional<Plate> plate;
    private final List<Opening> down;
    private final List<Opening> backwards;

    TopCuts(Frame frame, MachineBolts bolts, Optional<Plate> plate) {
        this.frame = frame;
        this.plate = plate;
        var cutouts = new Cutouts(frame);
        this.down = new ArrayList<>(bolts.openings());
        plate.ifPresent(place -> down.add(place.opening()));
        down.addAll(cutouts.in(Cutout.In.WORKTOP));
        this.backwards = cutouts.in(Cutout.In.BACK);
    }

    List<Group> into(List<Group> groups) {
        return groups.stream()
                .map(group -> new Group(
                        group.name(),
                        group.travel(),
                        group.parts().stream()
                                .map(part -> new PlacedPart(
                                        part.label(), part.part().with(cuts(group, part)), part.placement()))
                                .toList(),
                        group.blocks()))
                .toList();
    }

    private List<Feature> cuts(Group group, PlacedPart part) {
        boolean worktop = group.name().equals("worktop");
        var openings = worktop || part.part().name().equals("sub-top")
                ? down
                : part.part().name().equals("back") ? backwards : List.<Opening>of();
        var cuts = new ArrayList<Feature>();
        if (worktop && part.equals(group.parts().get(group.parts().size() - 1))) {
            plate.ifPresent(place -> cuts.addAll(rabbet(place, part)));
        }
        openings.stream()
                .filter(opening -> opening.isIn(part))
                .map(opening -> opening.in(part))
                .forEach(cuts::add);
        return cuts;
    }

    /** The rabbet in the upper layer, and pilot holes in its ledge. */
    private List<Feature> rabbet(Plate place, PlacedPart upper) {
        var features = new ArrayList<Feature>();
        var local = new InPart(upper);
        var up = local.facing(Axis.Z_PLUS);
        var measured = place.plate();
        features.add(Pocket.blind(
                up,
                local.rect(Seen.FROM_ABOVE, place.rabbet()),
                measured.radius(),
                measured.rabbetDepth(),
                "rabbet for " + measured.name()));
        double bore = frame.design().screws().panel().pilot();
        double depth = upper.part().thickness() - UNDER_PILOT;
        for (Point2 screw : place.screws()) {
            var at = local.rect(Seen.FROM_ABOVE, Taken.around(screw.x(), screw.y(), bore / 2));
            features.add(Hole.blind(
                    up, (at.x0() + at.x1()) / 2, (at.y0() + at.y1()) / 2, bore, depth, "levelling screw pilot"));
        }
        return features;
    }
}
