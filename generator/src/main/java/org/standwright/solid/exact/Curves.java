package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/**
 * The curve of an edge from the two surfaces that meet there.
 *
 * @param sides of the mesh that it stands for, in turn
 * @param from where it begins exactly; {@code to} where it ends
 */
record Curves(Model model, int[] sides, Vec3 from, Vec3 to) {
    /** Edges shorter than this are none, mm. */
    private static final double SHORTEST = 1e-5;
    /** An arc and the polygon that it stands for turn by the same angle, but for this, radians. */
    private static final double SAME_TURN = 1;

    /** None where the surfaces don't meet as the mesh says. */
    Optional<Curve> between(Surface one, Surface other) {
        if (one instanceof Round round) {
            return other instanceof Plane plane ? across(round, plane) : between(round, (Round) other);
        }
        return other instanceof Round round ? across(round, (Plane) one) : line();
    }

    /** A straight one the way that the mesh goes. */
    Optional<Curve> line() {
        var way = to.minus(from);
        var meshWay = model.to(sides[sides.length - 1]).minus(model.from(sides[0]));
        return way.length() > SHORTEST && way.dot(meshWay) > 0
                ? Optional.of(new Curve.Line(from, way.unit()))
                : Optional.empty();
    }

    private Optional<Curve> across(Round round, Plane plane) {
        double along = Math.abs(round.axis().dot(plane.normal()));
        if (along > 1 - Round.PARALLEL) {
            return circle(round);
        }
        if (round instanceof Cone) {
            return crossing(round, plane);
        }
        return along < Round.PARALLEL ? line() : ellipse((Cylinder) round, plane);
    }

    private Optional<Curve> between(Round one, Round other) {
        if (one.isCoaxial(other)) {
            return circle(one);
        }
        boolean parallel = one instanceof Cylinder
                && other instanceof Cylinder
                && one.axis().cross(other.axis()).length() < Round.PARALLEL;
        return parallel ? line() : crossing(one, other);
    }

    private Optional<Curve> circle(Round round) {
        double turn = Turning.of(model, round, sides);
        var axis = round.axis().times(turn < 0 ? -1 : 1);
        double height = round.height(from);
        var centre = round.point().plus(round.axis().times(height));
        boolean right = turns(round, axis, turn) && Grid.same(height, round.height(to));
        return right
                ? Optional.of(new Curve.Circle(centre, axis, round.arm(from).unit(), round.radiusAt(height)))
                : Optional.empty();
    }

    private Optional<Curve> ellipse(Cylinder round, Plane plane) {
        double turn = Turning.of(model, round, sides);
        double cosine = round.axis().dot(plane.normal());
        var centre = round.point().minus(round.axis().times(plane.distance(round.point()) / cosine));
        var axis = plane.normal().times(cosine * turn < 0 ? -1 : 1);
        var major = round.axis().minus(plane.normal().times(cosine)).unit();
        return turns(round, round.axis().times(turn < 0 ? -1 : 1), turn)
                ? Optional.of(new Curve.Ellipse(centre, axis, major, round.radius() / Math.abs(cosine), round.radius()))
                : Optional.empty();
    }

    private boolean turns(Round round, Vec3 axis, double turn) {
        boolean whole = model.sides().from(sides[0]) == model.sides().to(sides[sides.length - 1]);
        double exact = whole ? 2 * Math.PI : Turning.left(axis, round.arm(from), round.arm(to));
        return (whole || to.minus(from).length() > SHORTEST) && Math.abs(Math.abs(turn) - exact) < SAME_TURN;
    }

    private Optional<Curve> crossing(Surface one, Surface other) {
        var chain = new ArrayList<Vec3>(List.of(from));
        for (int i = 1; i < sides.length; i++) {
            chain.add(model.from(sides[i]));
        }
        chain.add(to);
        return Crossing.of(one, other, chain);
    }
}
