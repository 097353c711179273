package org.standwright.router.board;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.standwright.design.kit.Router;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.router.RoutedSheet;
import org.standwright.router.machining.Flat;

/**
 * Two places in a board's waste for the dowels that it is turned over on: as far apart as any two, clear of every part
 * and of the board's edges by half a dowel and the router's spacing, and not point-symmetric, so that a board that is
 * turned the wrong way, end over end, is seen to lie wrong.
 *
 * @param places the nearer one to the zero corner first; none where there is no room
 * @param misplaced how far off a board would lie that is turned end over end onto them, mm
 */
record Dowels(List<Vec2> places, double misplaced) {
    /** How deep they sit in the machine's bed, mm; our own choice. */
    static final double IN_BED = 12;
    /** A board that lies off by less is not seen to lie wrong, mm; our own choice. */
    static final double SEEN = 20;
    /** Places are rounded to this, mm. */
    private static final double STEP = 0.1;
    /** Dowels nearer to each other turn a board by chance, mm; common practice, no source. */
    private static final double NEAREST = 100;

    private static final Dowels NONE = new Dowels(List.of(), 0);

    Dowels {
        places = List.copyOf(places);
    }

    static Dowels none() {
        return NONE;
    }

    /** The best pair, or none where there is no room. */
    static Dowels of(RoutedSheet sheet, Router router) {
        double clear = router.dowel() / 2 + router.spacing() + STEP;
        double length = sheet.from().length();
        double width = sheet.from().width();
        if (!Grid.less(2 * clear, Math.min(length, width))) {
            return NONE;
        }
        Geometry free = Flat.of(Outline.of(new Rect(clear, clear, length - clear, width - clear)));
        for (var piece : sheet.pieces()) {
            free = Flat.without(free, Flat.grown(Flat.of(piece.outline()), clear));
        }
        var middle = new Vec2(length / 2, width / 2);
        // of any two points of an area, those farthest apart are corners of its hull
        var hull = corners(free.convexHull());
        var inner = corners(free);
        return farthest(hull, middle, SEEN)
                .or(() -> farthest(inner, middle, SEEN))
                .or(() -> farthest(hull, middle, 0))
                .orElse(NONE);
    }

    /** Whether they hold a board well: at least half of its length apart. */
    boolean areFarApart(RoutedSheet sheet) {
        return places.get(0).minus(places.get(1)).length() >= sheet.from().length() / 2;
    }

    /** Whether a board that is turned the wrong way is seen to lie wrong. */
    boolean tellTheWay() {
        return !Grid.less(misplaced, SEEN);
    }

    private static List<Vec2> corners(Geometry free) {
        return Arrays.stream(free.getCoordinates())
                .map(Dowels::rounded)
                .distinct()
                .toList();
    }

    private static Vec2 rounded(Coordinate at) {
        return new Vec2(Math.rint(at.x / STEP) * STEP, Math.rint(at.y / STEP) * STEP);
    }

    private static Optional<Dowels> farthest(List<Vec2> places, Vec2 middle, double seen) {
        Optional<Dowels> best = Optional.empty();
        double most = NEAREST;
        for (var a : places) {
            for (var b : places) {
                double apart = a.minus(b).length();
                double off = off(a, b, middle);
                if (apart > most + Grid.STEP && !Grid.less(off, seen) && isBefore(a, b)) {
                    most = apart;
                    best = Optional.of(new Dowels(List.of(a, b), off));
                }
            }
        }
        return best;
    }

    /**
     * How far off the board lies that a half turn brings onto the same two dowels, each hole on the other's dowel: twice
     * the way from the middle between them to the board's (own derivation). The other way round, each hole would have to
     * lie on its own dowel, which two apart never do both.
     */
    private static double off(Vec2 a, Vec2 b, Vec2 middle) {
        return a.plus(b).minus(middle.times(2)).length();
    }

    private static boolean isBefore(Vec2 a, Vec2 b) {
        return a.x() + a.y() <= b.x() + b.y();
    }
}
