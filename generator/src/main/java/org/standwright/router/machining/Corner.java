package org.standwright.router.machining;

import java.util.List;
import java.util.Optional;
import org.standwright.geom.Bend;
import org.standwright.geom.Loop;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;

/**
 * One corner of an outline that is cut out, seen from inside.
 *
 * @param in way of the side that ends there, of length 1
 * @param out way of the side that begins there, of length 1
 * @param before length of the side that ends there, mm
 * @param after length of the side that begins there, mm
 */
record Corner(Vec2 at, Vec2 in, Vec2 out, double before, double after) {
    /** Corners that turn by less than this are none, radians. */
    private static final double STRAIGHT = 1e-6;
    /** How much wider than the bit a relief is, so that the bit can enter it (references 9: 2 to 5 %). */
    static final double WIDER = 1.03;

    static Corner of(Outline outline, int index) {
        var at = outline.corner(index);
        var in = at.minus(outline.corner(index - 1));
        var out = outline.corner(index + 1).minus(at);
        return new Corner(at, in.times(1 / in.length()), out.times(1 / out.length()), in.length(), out.length());
    }

    /** How far the line turns left, radians; less than 0 at a corner that points into what is cut out. */
    double turn() {
        return StrictMath.atan2(in.cross(out), in.x() * out.x() + in.y() * out.y());
    }

    /** Whether a round bit cannot reach into it. */
    boolean isInside() {
        return turn() > STRAIGHT;
    }

    /** Half of the angle between its sides, radians, of a corner that is inside. */
    double half() {
        return (Math.PI - turn()) / 2;
    }

    /** How far from it the sides end where it is rounded, mm. */
    double rounding(double radius) {
        return radius / StrictMath.tan(half());
    }

    CornerCut square() {
        return new CornerCut(List.of(new Loop.Corner(at, 0)), 0, 0, Optional.empty());
    }

    CornerCut round(double radius) {
        double back = rounding(radius);
        return new CornerCut(
                List.of(new Loop.Corner(before(back), Bend.bulge(turn())), new Loop.Corner(after(back), 0)),
                back,
                back,
                Optional.empty());
    }

    /**
     * Relief by a circle through the corner with its centre on the bisector (references 9). Where the sides come
     * together so sharply that the bit could not pass between the circle's ends, a slot of the same width leads to it
     * (own derivation: they are 2 R sin(angle) apart).
     */
    CornerCut dogBone(double bit) {
        double r = WIDER * bit / 2;
        double half = half();
        var centre = at.plus(bisector().times(r));
        if (half < Math.PI / 4 && r * StrictMath.sin(2 * half) < bit / 2) {
            return slot(centre, r);
        }
        double back = 2 * r * StrictMath.cos(half);
        return new CornerCut(
                List.of(new Loop.Corner(before(back), Bend.bulge(2 * turn())), new Loop.Corner(after(back), 0)),
                back,
                back,
                Optional.of(Flat.disc(centre, r)));
    }

    private CornerCut slot(Vec2 end, double r) {
        double back = r / StrictMath.sin(half());
        var aside = before(back).minus(at.plus(bisector().times(back * StrictMath.cos(half()))));
        return new CornerCut(
                List.of(
                        new Loop.Corner(before(back), 0),
                        new Loop.Corner(end.plus(aside), 1),
                        new Loop.Corner(end.minus(aside), 0),
                        new Loop.Corner(after(back), 0)),
                back,
                back,
                Optional.of(Flat.slot(end, at.plus(bisector().times(back * StrictMath.cos(half()))), r)));
    }

    /**
     * Relief by a circle through the corner with its centre on the longer side, which only that side loses by
     * (references 9); in a sharp corner, whose other side would be in the bit's way, a dog-bone.
     */
    CornerCut tBone(double bit) {
        if (half() < Math.PI / 4 - STRAIGHT) {
            return dogBone(bit);
        }
        double r = WIDER * bit / 2;
        boolean ahead = after >= before;
        var centre = ahead ? after(r) : before(r);
        var from = ahead ? at : before(2 * r);
        var to = ahead ? after(2 * r) : at;
        return new CornerCut(
                List.of(new Loop.Corner(from, 1), new Loop.Corner(to, 0)),
                ahead ? 0 : 2 * r,
                ahead ? 2 * r : 0,
                Optional.of(Flat.disc(centre, r)));
    }

    private Vec2 before(double distance) {
        return at.minus(in.times(distance));
    }

    private Vec2 after(double distance) {
        return at.plus(out.times(distance));
    }

    private Vec2 bisector() {
        var between = out.minus(in);
        return between.times(1 / between.length());
    }
}
