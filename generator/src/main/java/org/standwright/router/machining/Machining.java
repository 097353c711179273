package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Grid;
import org.standwright.geom.Loop;
import org.standwright.part.Face;
import org.standwright.part.Part;

/**
 * All that a router does to one part.
 *
 * @param operations in the part's frame
 * @param remarks on what does not come out as designed, and on what to mind
 * @param byHand what cannot be cut from above: holes in edges and sloping edges
 */
public record Machining(Part part, List<Operation> operations, List<String> remarks, List<String> byHand) {
    /** Parts narrower than this come loose or tip, mm; common practice, no source. */
    private static final double NARROW = 75;
    /** The same of parts smaller than this, mm²; common practice, no source. */
    private static final double SMALL = 20_000;

    public Machining {
        operations = List.copyOf(operations);
        remarks = List.copyOf(remarks);
        byHand = List.copyOf(byHand);
    }

    /**
     * Works it out.
     *
     * @param thickness of the board that the part is cut from, as measured, mm
     */
    public static Machining of(Part part, Router router, double thickness) {
        var ground = new Ground(part, router.bit());
        var features = new FeatureWork(part, router, thickness, ground);
        part.features().forEach(feature -> feature.accept(features));
        var operations = new ArrayList<>(features.operations());
        var remarks = new ArrayList<>(features.remarks());
        double depth = router.skin() > 0 ? thickness - router.skin() : thickness + router.below();
        if (!(depth > Grid.STEP)) {
            throw new IllegalArgumentException("a skin of " + Mm.of(router.skin()) + " mm is all of a board of "
                    + Mm.of(thickness) + " mm; leave less of it.");
        }
        operations.add(new Operation(
                Optional.empty(), Work.outline(depth, thickness), new Mark.Closed(Loop.of(ground.outline()))));
        router.tabs().ifPresent(tabs -> addTabs(tabs, router, thickness, ground, operations, remarks));
        remarks.addAll(0, Trim.remarks(part));
        remarks.addAll(OutlineCorners.remarks(ground.outline(), router.bit()));
        if (isSmall(ground)) {
            remarks.add(
                    "small: little holds it down, so screw or tape it, or leave tabs or a skin; cut it last and slowly");
        }
        return new Machining(part, operations, remarks, HandWork.of(part));
    }

    private static void addTabs(
            Router.Tabs tabs,
            Router router,
            double thickness,
            Ground ground,
            List<Operation> operations,
            List<String> remarks) {
        int least = isSmall(ground) ? Tabs.LEAST_SMALL : Tabs.LEAST;
        var found = new Tabs(ground, operations, router.bit(), tabs.length(), least);
        found.lines().forEach(line -> operations.add(new Operation(Optional.empty(), Work.tab(tabs), line)));
        found.remark().ifPresent(remarks::add);
        if (!Grid.less(tabs.height(), thickness)) {
            remarks.add("tabs of " + Mm.of(tabs.height())
                    + " mm are as high as the board is thick: nothing is cut under them");
        }
    }

    private static boolean isSmall(Ground ground) {
        var bounds = ground.outline().bounds();
        return Math.min(bounds.width(), bounds.height()) < NARROW
                || ground.outline().area() < SMALL;
    }

    /** What is cut with one face up: all that has to enter by it, and where it is up first all that may. */
    public List<Operation> on(Face up, boolean first) {
        return operations.stream()
                .filter(operation -> operation.face().map(face -> face == up).orElse(first))
                .toList();
    }
}
