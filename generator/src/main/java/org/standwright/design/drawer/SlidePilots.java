package org.standwright.design.drawer;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.frame.SideBore;
import org.standwright.design.kit.Side;
import org.standwright.geom.Rect;

/** Pilot holes for the drawer slides in sides and partitions, along each slide line. */
public final class SlidePilots {
    private final Frame frame;
    private final List<BayLayout> bays;
    private final ScrewChoice screws;

    public SlidePilots(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        this.bays = bays;
        this.screws = new ScrewChoice(frame.design());
    }

    /** One hole a screw, the drawers from top to bottom; in a partition each stays within its half. */
    public List<SideBore> bores() {
        return bays.stream()
                .flatMap(bay -> bay.leaves(SectionLayout.Drawers.class))
                .flatMap(section -> section.drawers().stream().flatMap(drawer -> both(section.opening(), drawer)))
                .toList();
    }

    private Stream<SideBore> both(Rect opening, DrawerLayout drawer) {
        return Stream.concat(row(Side.LEFT, opening.x0(), drawer), row(Side.RIGHT, opening.x1(), drawer));
    }

    private Stream<SideBore> row(Side wall, double x, DrawerLayout drawer) {
        double front = DrawerFit.slideFront(frame);
        double pilot = frame.design().screws().slide().pilot();
        return drawer.slide().stream().flatMap(slide -> {
            double z = frame.openingBottom() + drawer.slideLineOnSide().orElseThrow();
            double depth = screws.slideDepth(
                    frame.isSide(x) ? screws.slideInto(frame.panel()) : screws.slideIntoShared(frame.panel()));
            return slide.cabinetHoles().stream()
                    .map(hole -> new SideBore(wall, x, front + hole, z, pilot, depth, "slide pilot"));
        });
    }
}
