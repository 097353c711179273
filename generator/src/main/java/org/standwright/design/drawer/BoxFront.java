package org.standwright.design.drawer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.Grip;
import org.standwright.design.StandDesign;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.column.BoxHeights;
import org.standwright.design.column.Running;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.part.Feature;
import org.standwright.part.Hole;

/**
 * What goes through the front of one drawer's box: the screws of the front before it and, where the notch in that front
 * reaches below the box's upper edge, the same notch. Part frame: x to the right, y up from the box's lower edge, mm.
 * Distances are common practice, no source.
 */
final class BoxFront {
    /** Least wood of the box front beside a notch, at each side. */
    static final double BESIDE_NOTCH = 20;
    /** Least wood between a notch and the groove of the bottom. */
    static final double OVER_GROOVE = 15;
    /** How much larger the hole in the box is than the screw, so that the front can be set: ± 2 mm. */
    private static final double SETTING = 4;
    /** Screws of the front stand this far from the box front's ends, or at a quarter of a narrow one. */
    private static final double SCREW_INSET = 60;
    /** Nearest that a screw may move to an end, with room for its washer inside the box. */
    private static final double LEAST_INSET = 25;
    /** Least wood between a notch and a screw's hole. */
    private static final double BESIDE_HOLE = 10;

    private final StandDesign design;
    private final Running running;
    private final DrawerLayout drawer;
    /** Its lower left corner, seen from the front in the assembly: y is the height. */
    private final double x0;

    private final double z0;

    BoxFront(StandDesign design, Rect opening, DrawerLayout drawer) {
        this.design = design;
        this.running = Running.of(design);
        this.drawer = drawer;
        double wall = design.drawers().box().material().thickness();
        this.x0 = opening.x0() + running.sideSpace() + wall - tongue(design);
        this.z0 = Math.max(drawer.front().y0(), opening.y0()) + running.below();
    }

    /** How far the ends of a box reach into its sides. */
    static double tongue(StandDesign design) {
        return StrictMath.floor(design.drawers().box().material().thickness()) / 2;
    }

    double length() {
        double wall = design.drawers().box().material().thickness();
        return drawer.box().width() - 2 * wall + 2 * tongue(design);
    }

    List<Feature> features() {
        var features = new ArrayList<Feature>();
        var notch = design.drawers().grip() instanceof Grip.Notch cut ? notch(cut) : Optional.<Rect>empty();
        notch.ifPresent(area -> features.add(FrontPanel.cut(area)));
        features.addAll(screws(notch));
        return features;
    }

    /** The widest notch that leaves wood beside it. */
    double widest() {
        double middle = middle();
        return 2 * (Math.min(middle, length() - middle) - BESIDE_NOTCH);
    }

    boolean isReachedBy(Grip.Notch notch) {
        return Grid.less(floor(notch), drawer.box().height());
    }

    /** The deepest notch of this width, from the upper edge of the drawer's front. */
    double deepest(Grip.Notch notch) {
        double bottom = BoxHeights.GROOVE_ABOVE_EDGE + new BoxHeights(design).grooveWidth() + OVER_GROOVE;
        double lowest =
                beside(notch.width()) < LEAST_INSET ? Math.max(bottom, running.frontScrew() + offNotch()) : bottom;
        return drawer.front().y1() - z0 - Math.min(lowest, drawer.box().height());
    }

    private Optional<Rect> notch(Grip.Notch notch) {
        double left = middle() - notch.width() / 2;
        return isReachedBy(notch)
                ? Optional.of(new Rect(
                        left, floor(notch), left + notch.width(), drawer.box().height()))
                : Optional.empty();
    }

    /** Both holes at one height and as far from their ends: at their usual place or beside the notch, else below it. */
    private List<Hole> screws(Optional<Rect> notch) {
        double inset = Math.min(SCREW_INSET, length() / 4);
        double y = Math.max(drawer.box().height() / 2, running.frontScrew());
        if (notch.isPresent() && Grid.less(notch.get().y0() - offNotch(), y)) {
            double free = beside(notch.get().width());
            if (free < LEAST_INSET) {
                y = notch.get().y0() - offNotch();
            } else {
                inset = Math.min(inset, free);
            }
        }
        return List.of(
                Hole.through(inset, y, bore(), "front screw, oversize"),
                Hole.through(length() - inset, y, bore(), "front screw, oversize"));
    }

    /** How far from its end a screw may stand beside a notch. */
    private double beside(double notch) {
        return Math.min(middle(), length() - middle()) - notch / 2 - offNotch();
    }

    private double offNotch() {
        return BESIDE_HOLE + bore() / 2;
    }

    private double bore() {
        return design.screws().panel().diameter() + SETTING;
    }

    private double middle() {
        return (drawer.front().x0() + drawer.front().x1()) / 2 - x0;
    }

    private double floor(Grip.Notch notch) {
        return drawer.front().y1() - notch.depth() - z0;
    }
}
