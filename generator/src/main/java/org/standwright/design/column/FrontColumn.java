package org.standwright.design.column;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.design.Content;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;

/**
 * Heights of the fronts in one bay, from top to bottom, with one gap above, below and between them.
 *
 * <p>n equal fronts in a zone of height H with gap g are (H - 2g - (n - 1)g) / n high (references 7.1, own derivation).
 */
public final class FrontColumn {
    private final StandDesign design;
    private final int bay;
    private final double gap;
    private final LeastFronts least;

    public FrontColumn(StandDesign design, int bay) {
        this.design = design;
        this.bay = bay;
        this.gap = design.drawers().gap();
        this.least = new LeastFronts(design);
        oneFlexibleKind();
    }

    /** Height of n equal fronts in a zone, mm: {@code edge} above and below them, {@code gap} between. */
    public static double equal(double zone, int n, double edge, double gap) {
        return (zone - 2 * edge - (n - 1) * gap) / n;
    }

    /** The least zone that the fronts of this bay can stand in, mm. */
    public double leastZone() {
        var wanted = new ArrayList<OptionalDouble>();
        for (var content : contents()) {
            if (content instanceof Content.GivenDrawers given) {
                given.fronts().forEach(front -> wanted.add(OptionalDouble.of(front)));
            } else if (content instanceof Content.EqualDrawers equal) {
                wanted.addAll(Collections.nCopies(equal.count(), OptionalDouble.empty()));
            } else if (content instanceof Content.FillDrawers fill) {
                wanted.add(OptionalDouble.of(fill.front()));
            }
        }
        double equal = least.equalShare(wanted);
        return gap
                + wanted.stream()
                        .mapToDouble(height -> height.orElse(equal) + gap)
                        .sum();
    }

    /** Whether the fronts can stretch to fill a taller zone. */
    private boolean isFlexible() {
        return contents().stream().anyMatch(content -> !(content instanceof Content.GivenDrawers));
    }

    /** Heights from top to bottom that fill a zone of this height exactly. */
    public List<Double> heights(double zone) {
        double left = zone - gap - fixed();
        int equalCount = contents().stream()
                .mapToInt(content -> content instanceof Content.EqualDrawers equal ? equal.count() : 0)
                .sum();
        var heights = new ArrayList<Double>();
        for (var content : contents()) {
            if (content instanceof Content.GivenDrawers given) {
                heights.addAll(given.fronts());
            } else if (content instanceof Content.EqualDrawers equal) {
                heights.addAll(Collections.nCopies(equal.count(), equal(left + gap, equalCount, gap, gap)));
            } else if (content instanceof Content.FillDrawers fill) {
                heights.addAll(filled(fill.front(), left));
            }
        }
        close(heights, zone);
        least.check(heights, bay);
        return heights;
    }

    /** Fronts of one height, as many as fit with a gap below each; the lowest takes what remains. */
    private List<Double> filled(double front, double left) {
        int count = (int) StrictMath.floor(left / (front + gap) + 1e-9);
        if (count < 1) {
            throw impossible(
                    "fronts of " + design.unit().length(front) + " do not fit into the "
                            + design.unit().length(left) + " that are left of its height.",
                    List.of("Use a lower front, or fewer drawers above and below."));
        }
        var fronts = new ArrayList<Double>();
        for (int i = 1; i < count; i++) {
            fronts.add(front);
        }
        fronts.add(left - (count - 1) * (front + gap) - gap);
        return fronts;
    }

    /** Given fronts, with the gap below each. */
    private double fixed() {
        return contents().stream()
                .filter(Content.GivenDrawers.class::isInstance)
                .flatMap(content -> ((Content.GivenDrawers) content).fronts().stream())
                .mapToDouble(front -> front + gap)
                .sum();
    }

    /** Given fronts that miss the zone by no more than a mark of the tape: the lowest takes the difference. */
    private void close(List<Double> heights, double zone) {
        var units = design.unit();
        double sum = gap + heights.stream().mapToDouble(height -> height + gap).sum();
        double rest = zone - sum;
        int last = heights.size() - 1;
        double lowest = heights.get(last) + rest;
        if (!isFlexible() && Grid.less(units.tapeStep(), Math.abs(rest))) {
            var ways = new ArrayList<String>();
            if (!Grid.less(Exact.onTapeDown(units, lowest), least.of(last, heights.size()))) {
                ways.add("Make the lowest front " + units.length(Exact.onTapeDown(units, lowest)) + " high.");
            }
            ways.add("Or make the working height "
                    + units.length(Exact.onTapeUp(units, design.workingHeight().height() - rest)) + ".");
            ways.add("Or replace one of them by \"equal-drawers\" or \"filled-drawers\", which take what is left.");
            throw impossible(
                    "the given fronts and their gaps add up to " + units.length(sum) + ", but the height to fill is "
                            + units.length(zone) + ".",
                    ways);
        }
        heights.set(last, lowest);
    }

    private void oneFlexibleKind() {
        long fills = contents().stream()
                .filter(Content.FillDrawers.class::isInstance)
                .count();
        long equals = contents().stream()
                .filter(Content.EqualDrawers.class::isInstance)
                .count();
        if (fills > 1 || fills == 1 && equals > 0) {
            throw impossible(
                    "more than one of its contents wants the height that is left.",
                    List.of("Keep one \"filled-drawers\", or any number of \"equal-drawers\"."));
        }
    }

    private ImpossibleDesignException impossible(String reason, List<String> waysOut) {
        return new ImpossibleDesignException(
                "/bays/" + bay + "/contents", "In bay " + (bay + 1) + " " + reason, waysOut);
    }

    private List<Content> contents() {
        return design.bays().get(bay).contents();
    }
}
