package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Grid;
import org.standwright.part.Face;

/** What comes loose on the machine: waste out of cutouts, and parts whose skin is cut away from below. */
final class Loosening {
    /** Waste narrower than this is chips, mm; our own choice. */
    private static final double CHIP = 5;
    /** A skin that is missing along more of the outline holds badly; our own choice. */
    private static final double MUCH = 0.1;
    /** Less of the outline is not worth a word. */
    private static final double LITTLE = 0.002;

    private final List<Operation> cuts;
    private final Router router;
    private final double thickness;

    Loosening(List<Operation> operations, Router router, double thickness) {
        cuts = operations.stream()
                .filter(cut -> cut.work().kind() != Kind.OUTLINE && cut.work().kind() != Kind.TAB)
                .filter(cut -> !cut.work().isAfterTrim() && cut.work().depth().isPresent())
                .toList();
        this.router = router;
        this.thickness = thickness;
    }

    /** The waste that the bit's way round a cutout or a large bore leaves free. */
    Optional<String> slugs() {
        Map<String, Integer> sizes = new LinkedHashMap<>();
        for (var cut : cuts) {
            if (goesThrough(cut)) {
                slugsOf(cut.mark()).forEach(size -> sizes.merge(size, 1, Integer::sum));
            }
        }
        return sizes.isEmpty()
                ? Optional.empty()
                : Optional.of("waste comes free in it: "
                        + sizes.entrySet().stream()
                                .map(size -> size.getValue() + " x " + size.getKey())
                                .collect(Collectors.joining(", "))
                        + "; hold it with double-sided tape or a screw, or clear it as a pocket");
    }

    private List<String> slugsOf(Mark mark) {
        if (mark instanceof Mark.Circle circle) {
            double left = circle.diameter() - 2 * router.bit();
            return Grid.less(left, CHIP) ? List.of() : List.of(Mm.of(left) + " mm across");
        }
        var sizes = new ArrayList<String>();
        var left = mark.accept(new MarkArea()).buffer(-router.bit());
        for (int i = 0; i < left.getNumGeometries(); i++) {
            var box = left.getGeometryN(i).getEnvelopeInternal();
            if (!left.isEmpty() && !Grid.less(Math.min(box.getWidth(), box.getHeight()), CHIP)) {
                sizes.add(Mm.of(Math.rint(box.getWidth())) + " x " + Mm.of(Math.rint(box.getHeight())) + " mm");
            }
        }
        return sizes;
    }

    /**
     * Share of the outline where a cut from the lower face, or one right through, leaves no skin.
     *
     * @param up the face that is up when the outline is cut
     */
    double bare(Geometry outline, Face up) {
        Geometry open = Flat.nothing();
        for (var cut : cuts) {
            boolean fromBelow = cut.face().filter(face -> face != up).isPresent();
            if (fromBelow && !Grid.less(cut.work().depth().orElse(0), router.skin()) || goesThrough(cut)) {
                open = open.union(cut.mark().accept(new MarkArea()));
            }
        }
        return outline.intersection(open).getLength() / outline.getLength();
    }

    static boolean isMuch(double bare) {
        return bare > MUCH;
    }

    /** What to say of a share of the outline. */
    static Optional<String> words(double bare) {
        return bare < LITTLE
                ? Optional.empty()
                : Optional.of("no skin is left along " + Mm.of(Math.max(1, Math.rint(100 * bare)))
                        + " % of its outline, where it is cut away from the lower face: hold it there in another way");
    }

    private boolean goesThrough(Operation cut) {
        return cut.work().goesThrough(thickness);
    }
}
