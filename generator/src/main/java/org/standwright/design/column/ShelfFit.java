package org.standwright.design.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.kit.Hinge;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Heights of the shelves in one opening, and of the holes for the pins of adjustable ones. */
public final class ShelfFit {
    /** Holes in a row are this far apart, mm (references 7.2: guides to the 32 mm system). */
    public static final double PITCH = 32;
    /** Diameter of the pins and their holes, mm (references 7.2: guides to the 32 mm system). */
    public static final double PIN = 5;
    /** The rows end this far from the levels above and below, mm; common practice, no source. */
    static final double FROM_LEVEL = 3 * PITCH;
    /** Wood between a hinge and the nearest hole, mm. */
    static final double FROM_HINGE = PIN / 2 + 5;

    private ShelfFit() {}

    /** Undersides of fixed shelves above the opening's lower edge, rising: the same space between all of them. */
    static List<Double> fixed(int count, double opening, double panel) {
        double space = (opening - count * panel) / (count + 1);
        return IntStream.range(0, count)
                .mapToObj(i -> space + i * (space + panel))
                .toList();
    }

    /** The same for adjustable ones: on the holes nearest to even spaces. */
    static List<Double> adjustable(int count, Rect opening, double panel, List<DoorLayout> doors, String field) {
        var holes = holes(opening, doors);
        var shelves = new ArrayList<Double>();
        double lowest = 0;
        for (double even : fixed(count, opening.height(), panel)) {
            double from = lowest;
            double shelf = holes.stream()
                    .map(hole -> hole - opening.y0() + PIN / 2)
                    .filter(place -> !Grid.less(place, from))
                    .filter(place -> doors.stream()
                            .noneMatch(door -> isAtHinge(opening.y0() + place, opening.y0() + place + panel, door)))
                    .min(Comparator.comparingDouble(place -> Math.abs(place - even)))
                    .orElseThrow(() -> new ImpossibleDesignException(
                            field,
                            count + " adjustable shelves do not find room on the holes between the levels and hinges.",
                            List.of("Use fewer shelves, or \"fixed\" ones.")));
            shelves.add(shelf);
            lowest = shelf + panel + LeastHeights.CLEAR;
        }
        return shelves;
    }

    /** Heights of the holes above the floor, rising, over the middle of an opening; none beside a door's hinge. */
    public static List<Double> holes(Rect opening, List<DoorLayout> doors) {
        int count = 1 + (int) StrictMath.floor((opening.height() - 2 * FROM_LEVEL) / PITCH + 1e-9);
        return IntStream.range(0, Math.max(0, count))
                .mapToObj(i -> opening.y0() + FROM_LEVEL + i * PITCH)
                .filter(hole -> doors.stream().noneMatch(door -> isBesideHinge(hole, door)))
                .toList();
    }

    /** Shelves that lie on whole steps of the rows lie at least this far apart, mm. */
    static double apart(double panel) {
        return PITCH * StrictMath.ceil((panel + LeastHeights.CLEAR) / PITCH - 1e-9);
    }

    private static boolean isBesideHinge(double hole, DoorLayout door) {
        double off = HingeSpan.half(door.hinge()) + FROM_HINGE;
        return door.hinges().stream().anyMatch(hinge -> Math.abs(door.front().y0() + hinge - hole) < off);
    }

    /** Whether a board between these two heights meets an arm or plate that reaches into the opening. */
    private static boolean isAtHinge(double underside, double top, DoorLayout door) {
        double half = HingeSpan.half(door.hinge());
        return door.hinge() instanceof Hinge.Concealed
                && door.hinges().stream()
                        .map(hinge -> door.front().y0() + hinge)
                        .anyMatch(z -> Grid.less(underside, z + half) && Grid.less(z - half, top));
    }
}
