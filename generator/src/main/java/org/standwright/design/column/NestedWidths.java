package org.standwright.design.column;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.Bay;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;

/** Whether the widths given to bays within a divided part go together with each other and with its opening. */
final class NestedWidths {
    private final StandDesign design;
    private final List<BayPlace> places;
    private final List<Bay> bays;
    private final double opening;
    private final LeastWidths least;

    NestedWidths(StandDesign design, List<BayPlace> places, List<Bay> bays, double opening) {
        this.design = design;
        this.places = places;
        this.bays = bays;
        this.opening = opening;
        this.least = new LeastWidths(design);
    }

    /**
     * @param left what the given bays and the partitions leave of the opening, mm
     * @param sharing how many bays share it
     */
    void check(double left, long sharing) {
        for (int i = 0; i < bays.size(); i++) {
            wideEnough(i, left, sharing);
        }
        double missing = sharing * least.share(bays) - left;
        if (Grid.less(0, missing)) {
            throw tooWide(missing, sharing);
        }
        if (sharing == 0 && !Grid.same(left, 0)) {
            throw refusal(
                    bays.size() - 1,
                    "leaves " + units(left) + " of the part that it stands in, which is " + units(opening) + " wide.",
                    exactly(bays.size() - 1, left));
        }
    }

    /** Where every bay has a width, each is what the others leave. */
    private String exactly(int bay, double left) {
        double closing = bays.get(bay).width().getAsDouble() + left;
        var leave = "eave its width out: it takes what is left.";
        return Grid.less(closing, least.written(bays.get(bay)))
                ? "L" + leave
                : "Make it " + Exact.length(design.unit(), closing) + " wide, or l" + leave;
    }

    private void wideEnough(int bay, double left, long sharing) {
        double needed = least.of(bays.get(bay));
        if (bays.get(bay).width().isPresent() && Grid.less(bays.get(bay).width().getAsDouble(), needed)) {
            throw refusal(
                    bay,
                    "is too narrow for what stands in it: that takes " + units(needed) + " or more.",
                    sharing == 0 ? exactly(bay, left) : "Make it " + Exact.length(design.unit(), needed) + " wide.");
        }
    }

    /** Points at the bay that can give most. */
    private ImpossibleDesignException tooWide(double missing, long sharing) {
        int widest = IntStream.range(0, bays.size())
                .filter(bay -> bays.get(bay).width().isPresent())
                .reduce((a, b) -> spare(b) > spare(a) ? b : a)
                .orElseThrow();
        double then = bays.get(widest).width().getAsDouble() - missing;
        double shown = sharing == 0 ? then : Exact.onTapeDown(design.unit(), then);
        boolean enough = !Grid.less(shown, least.written(bays.get(widest)));
        return refusal(
                widest,
                "is " + units(missing) + " too wide: with the bays beside it it does not fit into the " + units(opening)
                        + " of the part that they stand in.",
                enough
                        ? "Make it " + Exact.length(design.unit(), shown) + " wide."
                        : "Make it and those beside it narrower, or leave their widths out.");
    }

    private double spare(int bay) {
        return bays.get(bay).width().getAsDouble() - least.written(bays.get(bay));
    }

    private ImpossibleDesignException refusal(int bay, String reason, String wayOut) {
        return new ImpossibleDesignException(
                places.get(bay).pointer() + "/width",
                "Bay " + places.get(bay).name() + " with an opening of "
                        + units(bays.get(bay).width().getAsDouble()) + " " + reason,
                List.of(wayOut));
    }

    private String units(double mm) {
        return design.unit().length(mm);
    }
}
