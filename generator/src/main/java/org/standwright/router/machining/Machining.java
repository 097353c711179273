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
 * @param operations in the part's frame; what is made after a trim is among them, as the part's drawing shows it
 * @param remarks on what does not come out as designed, and on what to mind
 * @param cautions on what can come loose
 * @param byHand what cannot be cut from above: holes in edges and sloping edges
 */
public record Machining(
        Part part, List<Operation> operations, List<String> remarks, List<String> cautions, List<String> byHand) {
    /** Parts narrower than this come loose or tip, mm; common practice, no source. */
    private static final double NARROW = 75;
    /** The same of parts smaller than this, mm²; common practice, no source. */
    private static final double SMALL = 20_000;

    public Machining {
        operations = List.copyOf(operations);
        remarks = List.copyOf(remarks);
        cautions = List.copyOf(cautions);
        byHand = List.copyOf(byHand);
    }

    /**
     * Works it out.
     *
     * @param thickness of the board that the part is cut from, as measured, mm
     * @param up the face that is up when the outline is cut
     */
    public static Machining of(Part part, Router router, double thickness, Face up, Sizes sizes) {
        var ground = new Ground(part, router.bit());
        var features = new FeatureWork(part, router, thickness, ground, sizes);
        part.features().forEach(feature -> feature.accept(features));
        var operations = new ArrayList<>(features.operations());
        var remarks = new ArrayList<>(features.remarks());
        var cautions = new ArrayList<String>();
        double depth = router.skin() > 0 ? thickness - router.skin() : thickness + router.below();
        if (!(depth > Grid.STEP)) {
            throw new IllegalArgumentException("a skin of " + Mm.of(router.skin()) + " mm is all of a board of "
                    + Mm.of(thickness) + " mm; leave less of it.");
        }
        var loose = new Loosening(operations, router, thickness);
        operations.add(new Operation(
                Optional.empty(), Work.outline(depth, thickness), new Mark.Closed(Loop.of(ground.outline()))));
        router.tabs().ifPresent(tabs -> addTabs(tabs, router, thickness, up, ground, operations, remarks, cautions));
        if (router.skin() > 0) {
            double bare = loose.bare(ground.area().getBoundary(), up);
            Loosening.words(bare).ifPresent(Loosening.isMuch(bare) ? cautions::add : remarks::add);
        }
        loose.slugs().ifPresent(cautions::add);
        remarks.addAll(0, Trim.remarks(part));
        remarks.addAll(OutlineCorners.remarks(ground.outline(), router.bit()));
        if (isSmall(ground)) {
            boolean held = router.tabs().isPresent() || router.skin() > 0;
            remarks.add("small: little holds it down, so screw or tape it"
                    + (held ? " besides" : ", or leave tabs or a skin") + "; cut it last and slowly");
        }
        return new Machining(part, operations, remarks, cautions, HandWork.of(part, sizes));
    }

    private static void addTabs(
            Router.Tabs tabs,
            Router router,
            double thickness,
            Face up,
            Ground ground,
            List<Operation> operations,
            List<String> remarks,
            List<String> cautions) {
        int least = isSmall(ground) ? Tabs.LEAST_SMALL : Tabs.LEAST;
        var found = new Tabs(ground, operations, router, thickness, up, least);
        found.lines().forEach(line -> operations.add(new Operation(Optional.empty(), Work.tab(tabs), line)));
        found.caution().ifPresent(cautions::add);
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

    /** What is cut on the board with one face up: all that has to enter by it, and where it is up first all that may. */
    public List<Operation> on(Face up, boolean first) {
        return operations.stream()
                .filter(operation -> !operation.work().isAfterTrim())
                .filter(operation -> operation.face().map(face -> face == up).orElse(first))
                .toList();
    }

    /** Whether some of it is made after the part is trimmed, and so not on the board. */
    public boolean goesOnAfterTrim() {
        return operations.stream().anyMatch(operation -> operation.work().isAfterTrim());
    }
}
