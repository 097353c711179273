package org.standwright.router.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
 * and of the board's edges by half a dowel and the router's spacing.
 */
final class Dowels {
    /** Places are rounded to this, mm. */
    private static final double STEP = 0.1;
    /** Dowels nearer to each other turn a board by chance, mm; common practice, no source. */
    private static final double NEAREST = 100;

    private Dowels() {}

    /** Two places, the nearer one to the zero corner first, or none where there is no room. */
    static List<Vec2> of(RoutedSheet sheet, Router router) {
        double clear = router.dowel() / 2 + router.spacing() + STEP;
        double length = sheet.from().length();
        double width = sheet.from().width();
        if (!Grid.less(2 * clear, Math.min(length, width))) {
            return List.of();
        }
        Geometry free = Flat.of(Outline.of(new Rect(clear, clear, length - clear, width - clear)));
        for (var piece : sheet.pieces()) {
            free = Flat.without(free, Flat.grown(Flat.of(piece.outline()), clear));
        }
        return farthest(corners(free));
    }

    /** Whether they hold a board well: at least half of its length apart. */
    static boolean areFarApart(List<Vec2> places, RoutedSheet sheet) {
        return places.get(0).minus(places.get(1)).length() >= sheet.from().length() / 2;
    }

    /** Of any two points of an area, those farthest apart are two of its corners, and of its hull. */
    private static List<Vec2> corners(Geometry free) {
        return Arrays.stream(free.convexHull().getCoordinates())
                .map(Dowels::rounded)
                .distinct()
                .toList();
    }

    private static Vec2 rounded(Coordinate at) {
        return new Vec2(Math.rint(at.x / STEP) * STEP, Math.rint(at.y / STEP) * STEP);
    }

    private static List<Vec2> farthest(List<Vec2> places) {
        var best = new ArrayList<Vec2>();
        double most = NEAREST;
        for (var a : places) {
            for (var b : places) {
                double apart = a.minus(b).length();
                if (apart > most + Grid.STEP && isBefore(a, b)) {
                    most = apart;
                    best = new ArrayList<>(List.of(a, b));
                }
            }
        }
        return best;
    }

    private static boolean isBefore(Vec2 a, Vec2 b) {
        return a.x() + a.y() <= b.x() + b.y();
    }
}
