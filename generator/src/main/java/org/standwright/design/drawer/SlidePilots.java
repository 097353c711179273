package org.standwright.design.drawer;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.part.Face;
import org.standwright.part.Hole;

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

    /** In the left side's frame: x up from its lower end, y from the front edge. */
    public List<Hole> rightFaceOfLeftSide() {
        double depth = screws.slideDepth(screws.slideInto(frame.panel()));
        return holes(0, Face.BENCH, frame.panel(), false, depth).toList();
    }

    /** In the right side's frame: x up from its lower end, y from the rear edge. */
    public List<Hole> leftFaceOfRightSide() {
        double depth = screws.slideDepth(screws.slideInto(frame.panel()));
        return holes(bays.size() - 1, Face.BENCH, frame.panel(), true, depth).toList();
    }

    /** In the partition's frame: its show face looks left, its lower end stands in the bottom's dado. */
    public List<Hole> partition(int index) {
        double depth = screws.slideDepth(screws.slideIntoShared(frame.panel()));
        return Stream.concat(
                        holes(index, Face.SHOW, frame.housing(), false, depth),
                        holes(index + 1, Face.BENCH, frame.housing(), false, depth))
                .toList();
    }

    /** One hole a screw, the drawers from top to bottom. */
    private Stream<Hole> holes(int bay, Face face, double bottomInPart, boolean fromRear, double depth) {
        return bays.get(bay).drawers().stream()
                .flatMap(drawer -> row(drawer, face, bottomInPart + drawer.slideLineOnSide(), fromRear, depth));
    }

    private Stream<Hole> row(DrawerLayout drawer, Face face, double x, boolean fromRear, double depth) {
        double front = DrawerFit.slideFront(frame);
        double pilot = frame.design().screws().slide().pilot();
        return drawer.slide().cabinetHoles().stream()
                .map(hole -> front + hole)
                .map(y -> Hole.blind(face, x, fromRear ? frame.depth() - y : y, pilot, depth, "slide pilot"));
    }
}
