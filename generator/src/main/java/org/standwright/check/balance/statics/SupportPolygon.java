package org.standwright.check.balance.statics;

import java.util.ArrayList;
import java.util.List;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;

/**
 * What a stand is sure to stand on, however its casters have swivelled.
 *
 * <p>A centre of mass is held against falling in direction n when some foot reaches farther that way: when {@code n·p
 * <= max(n·c - r)} over all feet with centre c and radius r. The directions in which two feet reach equally far, {@code
 * n·(c2 - c1) = r2 - r1}, are those of the inner common tangents of their circles; between them one foot alone holds,
 * and its two tangents say as much as all directions between. So the tangents that no other foot reaches over are the
 * tipping edges.
 *
 * @param edges counter-clockwise by their normals
 */
public record SupportPolygon(List<TippingEdge> edges) {
    private static final double FULL_TURN = 2 * Math.PI;
    /** Two directions this close are one, radians. */
    private static final double SAME = 1e-9;

    public SupportPolygon {
        edges = List.copyOf(edges);
    }

    /** The polygon of these feet, at least one; of feet in a row or of one foot it has no area, and all weights tip. */
    public static SupportPolygon of(List<Contact> contacts) {
        if (contacts.isEmpty()) {
            throw new IllegalArgumentException("a stand without feet stands on nothing; give it one.");
        }
        return new SupportPolygon(closed(tangents(contacts)).stream()
                .map(angle -> edge(angle, contacts))
                .toList());
    }

    private static TippingEdge edge(double angle, List<Contact> contacts) {
        var normal = new Vec2(StrictMath.cos(angle), StrictMath.sin(angle));
        return new TippingEdge(normal, reach(normal, contacts));
    }

    private static double reach(Vec2 direction, List<Contact> contacts) {
        return contacts.stream()
                .mapToDouble(contact -> contact.reach(direction))
                .max()
                .orElseThrow();
    }

    /** Directions of the tangents that no other foot reaches over, rising from 0 to a full turn. */
    private static List<Double> tangents(List<Contact> contacts) {
        var angles = new ArrayList<Double>();
        for (var from : contacts) {
            for (var to : contacts) {
                double length = to.centre().minus(from.centre()).length();
                double closer = to.radius() - from.radius();
                if (Grid.less(Math.abs(closer), length)) {
                    var normal = tangent(from, to, closer / length);
                    if (!Grid.less(from.reach(normal), reach(normal, contacts))) {
                        angles.add(angle(normal));
                    }
                }
            }
        }
        angles.sort(null);
        return angles;
    }

    /** The direction, to the right of the way between two feet, in which both reach equally far. */
    private static Vec2 tangent(Contact from, Contact to, double sine) {
        var way = to.centre().minus(from.centre());
        var along = way.times(1 / way.length());
        var right = new Vec2(along.y(), -along.x());
        return along.times(sine).plus(right.times(Math.sqrt(1 - sine * sine)));
    }

    private static double angle(Vec2 direction) {
        double angle = StrictMath.atan2(direction.y(), direction.x());
        return angle < -SAME ? angle + FULL_TURN : Math.max(0, angle);
    }

    /** Each direction once, and more where one foot alone holds over half a turn or more. */
    private static List<Double> closed(List<Double> angles) {
        if (angles.isEmpty()) {
            return List.of(0.0, FULL_TURN / 3, 2 * FULL_TURN / 3);
        }
        var closed = new ArrayList<Double>();
        for (int i = 0; i < angles.size(); i++) {
            double angle = angles.get(i);
            double next = i + 1 < angles.size() ? angles.get(i + 1) : angles.get(0) + FULL_TURN;
            if (next - angle > SAME) {
                closed.add(angle);
            }
            if (next - angle > FULL_TURN / 2 - SAME) {
                closed.add(angle + (next - angle) / 3);
                closed.add(angle + 2 * (next - angle) / 3);
            }
        }
        return closed;
    }
}
