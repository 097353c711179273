package org.standwright.design.drawer;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.standwright.design.Grip;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Whether every front and door leaves enough wood around the notch in its upper edge, and every box behind a front. */
public final class NotchFit {
    /** Least wood beside a notch, both sides together, mm; common practice, no source. */
    private static final double BESIDE_NOTCH = 60;
    /** The narrowest and the shallowest notch that a design file takes, mm. */
    private static final double NARROWEST = 20;

    private static final double SHALLOWEST = 5;

    private final StandDesign design;

    public NotchFit(StandDesign design) {
        this.design = design;
    }

    /** Refuses a notch that is too wide for the narrowest of the fronts, or too deep for the lowest. */
    public void check(List<BayLayout> bays) {
        var fronts = bays.stream()
                .flatMap(bay -> bay.leaves().stream())
                .flatMap(NotchFit::fronts)
                .toList();
        if (design.drawers().grip() instanceof Grip.Notch notch && !fronts.isEmpty()) {
            var boxes = bays.stream()
                    .flatMap(bay -> bay.leaves().stream())
                    .flatMap(this::boxes)
                    .toList();
            width(notch, least(fronts, Rect::width), boxes);
            depth(notch, least(fronts, Rect::height), boxes);
        }
    }

    private static Stream<Rect> fronts(SectionLayout section) {
        if (section instanceof SectionLayout.Drawers drawers) {
            return drawers.drawers().stream().map(DrawerLayout::front);
        }
        return section instanceof SectionLayout.Closed closed
                ? closed.doors().stream().map(DoorLayout::front)
                : Stream.empty();
    }

    private Stream<BoxFront> boxes(SectionLayout section) {
        return section instanceof SectionLayout.Drawers drawers
                ? drawers.drawers().stream().map(drawer -> new BoxFront(design, drawers.opening(), drawer))
                : Stream.empty();
    }

    private static double least(List<Rect> fronts, ToDoubleFunction<Rect> size) {
        return fronts.stream().mapToDouble(size).min().orElseThrow();
    }

    private void width(Grip.Notch notch, double front, List<BoxFront> boxes) {
        double inFront = front - BESIDE_NOTCH;
        double inBox = boxes.stream()
                .filter(box -> box.isReachedBy(notch))
                .mapToDouble(BoxFront::widest)
                .min()
                .orElse(inFront);
        var ways = ways(Math.min(inFront, inBox), NARROWEST, "wide");
        if (Grid.less(inFront, notch.width())) {
            throw new ImpossibleDesignException(
                    "/drawers/grip/width",
                    "A notch " + shown(notch.width()) + " wide in a front of " + shown(front)
                            + " is more than its width less " + shown(BESIDE_NOTCH) + ".",
                    ways);
        }
        if (Grid.less(inBox, notch.width())) {
            throw new ImpossibleDesignException(
                    "/drawers/grip/width",
                    "A notch " + shown(notch.width()) + " wide goes through the front of the box too and leaves less"
                            + " than " + shown(BoxFront.BESIDE_NOTCH) + " beside it there.",
                    ways);
        }
    }

    private void depth(Grip.Notch notch, double front, List<BoxFront> boxes) {
        double box = boxes.stream()
                .mapToDouble(behind -> behind.deepest(notch))
                .min()
                .orElse(front);
        double most = Math.min(front / 2, box);
        if (Grid.less(front / 2, notch.depth())) {
            throw new ImpossibleDesignException(
                    "/drawers/grip/depth",
                    "A notch " + shown(notch.depth()) + " deep in a front of " + shown(front)
                            + " is more than half of its height.",
                    ways(most, SHALLOWEST, "deep"));
        }
        if (Grid.less(box, notch.depth())) {
            throw new ImpossibleDesignException(
                    "/drawers/grip/depth",
                    "A notch " + shown(notch.depth()) + " deep goes through the front of the box too and comes nearer"
                            + " than " + shown(BoxFront.OVER_GROOVE)
                            + " to the groove of its bottom, or too near the screws of the drawer's front.",
                    ways(most, SHALLOWEST, "deep"));
        }
    }

    private List<String> ways(double most, double least, String word) {
        double nearest = Exact.onTapeDown(design.unit(), most);
        var pulls = "Use pulls instead.";
        return Grid.less(nearest, least)
                ? List.of(pulls)
                : List.of("Make the notch " + shown(nearest) + " " + word + ".", pulls);
    }

    private String shown(double mm) {
        return design.unit().length(mm);
    }
}
