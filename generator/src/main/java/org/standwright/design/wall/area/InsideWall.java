package org.standwright.design.wall.area;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.wall.Obstacle;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.unit.Units;

/** Whether obstacles lie within the outline of their wall; they may touch its edges. */
final class InsideWall {
    private final Outline outline;
    private final Units units;

    InsideWall(Outline outline, Units units) {
        this.outline = outline;
        this.units = units;
    }

    /** Refuses one that does not, with the nearest place where it would. */
    void check(Obstacle obstacle, String wall, Rect itself, String field) {
        var along = BareArea.of(outline, List.of()).free(itself.y0(), itself.y1());
        if (along.stream().noneMatch(free -> free.holds(new Interval(itself.x0(), itself.x1())))) {
            var x = nearest(along, itself.x0(), itself.width());
            throw new ImpossibleDesignException(
                    field + "/" + fieldToChange(itself, obstacle),
                    "'" + obstacle.called() + "' " + passes(itself, wall) + ".",
                    waysOut(obstacle, itself, x));
        }
    }

    private List<String> waysOut(Obstacle obstacle, Rect itself, OptionalDouble x) {
        var ways = new ArrayList<String>();
        x.ifPresent(place -> ways.add("Its nearest place at this height is x = " + units.length(place) + "."));
        upright(obstacle, itself)
                .ifPresent(way -> ways.add((ways.isEmpty() ? "Above" : "Or above") + " this x " + way));
        if (ways.isEmpty()) {
            ways.add("Nowhere along the wall is room for " + units.length(itself.width()) + " x "
                    + units.length(itself.height()) + "; measure both again.");
        }
        return ways;
    }

    /** What fits over the width where it is: another height above the floor, or less height for what stands on it. */
    private Optional<String> upright(Obstacle obstacle, Rect itself) {
        var upwards = upwards(itself);
        if (standsOnFloor(obstacle)) {
            return upwards.stream()
                    .filter(free -> free.holds(itself.y0()) && Grid.less(itself.y0(), free.to()))
                    .findFirst()
                    .map(free -> "it can reach up to " + units.length(tapeDown(free.to())) + " at most.");
        }
        var bottom = nearest(upwards, itself.y0(), itself.height());
        return bottom.isPresent()
                ? Optional.of("its nearest bottom is " + units.length(bottom.getAsDouble()) + " above the floor.")
                : Optional.empty();
    }

    /** Where the wall reaches over all of its width, from below upwards. */
    private List<Interval> upwards(Rect itself) {
        var bounds = outline.bounds();
        if (Grid.less(itself.x0(), bounds.x0()) || Grid.less(bounds.x1(), itself.x1())) {
            return List.of();
        }
        var turned = outline.moved(corner -> new Vec2(corner.y(), corner.x()));
        return BareArea.of(turned, List.of()).free(itself.x0(), itself.x1());
    }

    private static boolean standsOnFloor(Obstacle obstacle) {
        return obstacle.kind() == Obstacle.Kind.DOOR || obstacle.kind().isFurniture();
    }

    private String fieldToChange(Rect itself, Obstacle obstacle) {
        var bounds = outline.bounds();
        boolean sideways = Grid.less(itself.x0(), bounds.x0()) || Grid.less(bounds.x1(), itself.x1());
        boolean upwards = Grid.less(itself.y0(), bounds.y0()) || Grid.less(bounds.y1(), itself.y1());
        if (sideways || !upwards) {
            return "x";
        }
        return standsOnFloor(obstacle) ? "height" : "bottom";
    }

    private String passes(Rect itself, String wall) {
        var bounds = outline.bounds();
        var edges = new ArrayList<String>();
        over("left end", bounds.x0() - itself.x0(), edges);
        over("right end", itself.x1() - bounds.x1(), edges);
        over("lower edge", bounds.y0() - itself.y0(), edges);
        over("upper edge", itself.y1() - bounds.y1(), edges);
        return edges.isEmpty()
                ? "at x = " + units.length(itself.x0()) + " to " + units.length(itself.x1()) + ", "
                        + units.length(itself.y0()) + " to " + units.length(itself.y1())
                        + " above the floor, reaches out of the outline of wall '" + wall + "'" + tooHigh(itself)
                : "reaches out of wall '" + wall + "': " + String.join(", ", edges);
    }

    /** By how much its top is above the slope over it. */
    private String tooHigh(Rect itself) {
        return upwards(itself).stream()
                .filter(free -> free.holds(itself.y0()))
                .findFirst()
                .map(free -> " by " + units.length(itself.y1() - free.to()) + " upwards")
                .orElse("");
    }

    private void over(String edge, double by, List<String> edges) {
        if (Grid.less(0, by)) {
            edges.add("beyond its " + edge + " by " + units.length(by));
        }
    }

    /** Where something of this size fits nearest to where it is, on the tape if it fits there, too. */
    private OptionalDouble nearest(List<Interval> free, double from, double size) {
        return free.stream()
                .filter(room -> !Grid.less(room.length(), size))
                .mapToDouble(room -> place(room.from(), Math.max(room.from(), room.to() - size), from))
                .boxed()
                .min(Comparator.comparingDouble(place -> Math.abs(place - from)))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private double place(double least, double most, double wanted) {
        if (wanted < least) {
            double mark = tapeUp(least);
            return mark <= most ? mark : least;
        }
        double mark = tapeDown(most);
        return wanted <= most ? wanted : mark >= least ? mark : most;
    }

    private double tapeUp(double length) {
        return StrictMath.ceil((length - Grid.STEP) / units.tapeStep()) * units.tapeStep();
    }

    private double tapeDown(double length) {
        return StrictMath.floor((length + Grid.STEP) / units.tapeStep()) * units.tapeStep();
    }
}
