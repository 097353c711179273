package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;

/** Arms and plates of hinges beside slides, drawers on their whole way and shelves: the nearest two. */
public final class HingeSlide implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "hinge-slide",
            "Do hinges clear slides, drawers and shelves?",
            "room between their boxes, at least 1 mm",
            "A drawer is looked at on its whole way out.",
            "common practice, no source");

    /** mm. */
    private static final double LEAST = 1;

    private static final List<String> SHELVES = List.of("shelf", "adjustable shelf", "divider");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var groups = stand.stand().assembly().groups();
        var others = groups.stream().flatMap(HingeSlide::inTheWay).toList();
        return groups.stream()
                .flatMap(group -> blocks(group, Block.Kind.HINGE))
                .flatMap(hinge -> others.stream()
                        .map(other -> new Near(hinge.label(), other.label(), room(hinge.box(), other.box()))))
                .min(Comparator.comparingDouble(Near::room))
                .map(near -> found(stand, near))
                .stream()
                .toList();
    }

    private static Finding found(LoadedStand stand, Near near) {
        if (Grid.less(near.room(), 0)) {
            return Finding.stop(TEXT, near.hinge(), "It meets " + near.other() + ".");
        }
        return Finding.judged(
                TEXT,
                near.hinge(),
                new Gauge(Quantity.LENGTH, Math.max(Grid.STEP, near.room()), Limit.cautionBelow(LEAST)),
                "Nearest to a hinge is " + near.other() + ", " + stand.units().length(near.room()) + " away.");
    }

    private static Stream<Thing> inTheWay(Group group) {
        if (group.moves()) {
            return group.boxes().map(box -> new Thing(group.name(), box.union(moved(box, group))));
        }
        var slides = blocks(group, Block.Kind.SLIDE);
        var shelves = group.parts().stream()
                .filter(placed -> SHELVES.contains(placed.part().name()))
                .map(placed -> new Thing(placed.label(), placed.box()));
        return Stream.concat(slides, shelves);
    }

    private static Stream<Thing> blocks(Group group, Block.Kind kind) {
        return group.blocks().stream()
                .filter(block -> block.kind() == kind)
                .map(block -> new Thing(block.label(), block.box()));
    }

    private static Box3 moved(Box3 box, Group group) {
        return new Box3(box.min().plus(group.travel()), box.max().plus(group.travel()));
    }

    private static double room(Box3 one, Box3 other) {
        var gaps = new ArrayList<Double>();
        gaps.add(Math.max(
                one.min().x() - other.max().x(), other.min().x() - one.max().x()));
        gaps.add(Math.max(
                one.min().y() - other.max().y(), other.min().y() - one.max().y()));
        gaps.add(Math.max(
                one.min().z() - other.max().z(), other.min().z() - one.max().z()));
        double apart = gaps.stream()
                .filter(gap -> gap > 0)
                .mapToDouble(gap -> gap * gap)
                .sum();
        return apart > 0
                ? StrictMath.sqrt(apart)
                : gaps.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    private record Thing(String label, Box3 box) {}

    private record Near(String hinge, String other, double room) {}
}
