package org.standwright.router.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.router.plan.Kit.Member;
import org.standwright.sheet.SheetUnit;

/**
 * Two equal parts that are no rectangles, one turned by half a turn, in the smallest rectangle that holds both at the clear
 * distance. The area of that rectangle is the product of two lengths that grow with the shift, so that it is least at a
 * corner of what is barred, or where the shift is along an axis (own derivation).
 */
final class Pairing {
    /** Share of two single rectangles that a pair has to stay below. */
    private static final double WORTHWHILE = 0.99;

    private static final GeometryFactory FACTORY = new GeometryFactory();
    /** What rounding of a shift to units may bring two outlines nearer, mm. */
    private static final double ROUNDING = 2.0 / SheetUnit.PER_MM;

    /** In which sense the second part is shifted more, measured by the rectangle's sides. */
    enum Beside {
        ALONG,
        ACROSS
    }

    private final Kit single;
    private final Blank blank;
    private final double spacing;

    /** @param spacing mm */
    private Pairing(Kit single, double spacing) {
        this.single = single;
        this.blank = single.members().get(0).blank();
        this.spacing = spacing;
    }

    /** None of what is a rectangle or a block, or where it saves next to nothing. */
    static Optional<Kit> of(Kit single, double spacing, Beside beside) {
        if (single.members().size() > 1
                || single.members().get(0).blank().outline().isRectangle()) {
            return Optional.empty();
        }
        return new Pairing(single, spacing).least(beside);
    }

    private Optional<Kit> least(Beside beside) {
        var first = blank.outline();
        var second = turned(Vec2.ZERO);
        var barred = Clearance.barred(first, second, spacing + ROUNDING);
        long most = (long) (WORTHWHILE * 2 * single.length() * single.width());
        return shifts(barred)
                .map(this::pair)
                .filter(pair -> beside(pair) == beside && area(pair) < most)
                .sorted(Comparator.comparingLong(Pairing::area).thenComparingInt(Kit::length))
                .filter(this::isClear)
                .findFirst();
    }

    private Outline turned(Vec2 corner) {
        return blank.at(corner, 2).outline();
    }

    /** Corners of what is barred, and where its edges cross the axes. */
    private static Stream<Vec2> shifts(Geometry barred) {
        var around = barred.getEnvelopeInternal();
        var level = line(around.getMinX(), 0, around.getMaxX(), 0);
        var upright = line(0, around.getMinY(), 0, around.getMaxY());
        var edges = barred.getBoundary();
        return Stream.of(edges, edges.intersection(level), edges.intersection(upright))
                .flatMap(some -> Stream.of(some.getCoordinates()))
                .map(at -> new Vec2(at.x, at.y));
    }

    private static Geometry line(double x0, double y0, double x1, double y1) {
        return FACTORY.createLineString(new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
    }

    private Kit pair(Vec2 shift) {
        int x = (int) Math.round(shift.x() * SheetUnit.PER_MM);
        int y = (int) Math.round(shift.y() * SheetUnit.PER_MM);
        return new Kit(
                single.length() + Math.abs(x),
                single.width() + Math.abs(y),
                List.of(member(Math.max(0, -x), Math.max(0, -y), 0), member(Math.max(0, x), Math.max(0, y), 2)));
    }

    private Member member(int x, int y, int quarters) {
        return new Member(blank, x, y, single.length(), single.width(), quarters);
    }

    private Beside beside(Kit pair) {
        double along = (double) (pair.length() - single.length()) / single.length();
        double across = (double) (pair.width() - single.width()) / single.width();
        return along >= across ? Beside.ALONG : Beside.ACROSS;
    }

    private static long area(Kit pair) {
        return (long) pair.length() * pair.width();
    }

    private boolean isClear(Kit pair) {
        var pieces = pair.at(0, 0, false, 0);
        return Clearance.distance(pieces.get(0).outline(), pieces.get(1).outline()) >= spacing;
    }
}
