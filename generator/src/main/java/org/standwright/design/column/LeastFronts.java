package org.standwright.design.column;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;

/** How low a front may be so that a drawer box with its slide still fits behind it. */
public final class LeastFronts {
    private final StandDesign design;
    private final BoxHeights boxes;

    public LeastFronts(StandDesign design) {
        this.design = design;
        this.boxes = new BoxHeights(design);
    }

    /** Least height of the front at a place (0 is the top) in a column of this many, mm. */
    public double of(int place, int count) {
        int ends = (place == 0 ? 1 : 0) + (place == count - 1 ? 1 : 0);
        return boxes.leastCell() + ends * lostAtEnd();
    }

    /** The equal height that the drawers without a given front need at least, mm. */
    public double equalShare(List<OptionalDouble> wanted) {
        return IntStream.range(0, wanted.size())
                .filter(place -> wanted.get(place).isEmpty())
                .mapToDouble(place -> of(place, wanted.size()))
                .max()
                .orElse(0);
    }

    public void check(List<Double> heights, int bay) {
        var units = design.unit();
        for (int i = 0; i < heights.size(); i++) {
            double least = of(i, heights.size());
            if (Grid.less(heights.get(i), least)) {
                throw new ImpossibleDesignException(
                        "/bays/" + bay + "/contents",
                        "Drawer " + (bay + 1) + "." + (i + 1) + " has a front of " + units.length(heights.get(i))
                                + ", too low for a box with its slide: it takes " + units.length(least) + " or more.",
                        List.of("Use fewer drawers in bay " + (bay + 1) + ", or make this front "
                                + Exact.up(units, least) + " high."));
            }
        }
    }

    /** What the end of an overlay column lies over the panel there; an inset front stays within the opening. */
    private double lostAtEnd() {
        var drawers = design.drawers();
        return drawers.mount() == Mount.INSET
                ? 0
                : Math.max(0, design.carcass().sheet().material().thickness() - drawers.gap());
    }
}
