package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Sides and partitions of a carcass, those within bays too, from left to right. */
record Uprights(List<PlacedPart> all) {
    Uprights {
        all = List.copyOf(all);
    }

    static Uprights of(Stand stand) {
        return new Uprights(stand.assembly().parts().stream()
                .filter(part ->
                        part.part().name().equals("side") || part.part().name().equals("partition"))
                .sorted(Comparator.comparingDouble(part -> part.box().centre().x()))
                .toList());
    }

    /** Those that do not sink: sides, and partitions on a bottom that is held below them. */
    static Uprights held(Stand stand) {
        var all = of(stand);
        var onBottom = BottomSpan.holdsPartitions(stand.design())
                ? all.on(Named.part(stand, "bottom"))
                : List.<PlacedPart>of();
        return new Uprights(all.all().stream()
                .filter(upright -> upright.part().name().equals("side") || onBottom.contains(upright))
                .toList());
    }

    /** Those that pass a height. */
    List<PlacedPart> at(double z) {
        return all.stream()
                .filter(upright -> !Grid.less(z, upright.box().min().z())
                        && !Grid.less(upright.box().max().z(), z))
                .toList();
    }

    /** What lies open between neighbours at a height. */
    List<Gap> gaps(double z) {
        var there = at(z);
        var gaps = new ArrayList<Gap>();
        for (int i = 1; i < there.size(); i++) {
            gaps.add(Gap.between(there.get(i - 1), there.get(i)));
        }
        return gaps;
    }

    /** The gap over or beside a place. */
    Optional<Gap> gap(double z, double x) {
        return gaps(z).stream().filter(gap -> gap.holds(x)).findFirst();
    }

    /** What lies open between the nearest of them on both sides of an opening that pass a height. */
    Gap around(Rect opening, double z) {
        var left = at(z).stream()
                .filter(upright -> !Grid.less(opening.x0(), upright.box().max().x()));
        var right =
                at(z).stream().filter(upright -> !Grid.less(upright.box().min().x(), opening.x1()));
        return Gap.between(
                left.reduce((first, last) -> last).orElseThrow(),
                right.findFirst().orElseThrow());
    }

    /** Partitions that stand on a level panel, between its ends. */
    List<PlacedPart> on(PlacedPart level) {
        var below = level.box();
        return all.stream()
                .filter(upright -> upright.part().name().equals("partition"))
                .filter(upright -> {
                    var foot = upright.box();
                    return Grid.less(below.min().z(), foot.min().z())
                            && !Grid.less(below.max().z(), foot.min().z())
                            && Grid.less(below.min().x(), foot.min().x())
                            && Grid.less(foot.max().x(), below.max().x());
                })
                .toList();
    }
}
