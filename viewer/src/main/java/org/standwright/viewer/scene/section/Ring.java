package org.standwright.viewer.scene.section;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/**
 * One closed ring of a cut.
 *
 * @param places in the frame of the part
 * @param corners the same in the plane
 * @param area mm², below 0 for a ring around a hole
 */
record Ring(List<Vec3> places, List<Vec2> corners, double area) {
    static Ring of(List<Vec3> places, PartPlane plane) {
        var corners = places.stream()
                .map(place -> new Vec2(plane.u(place), plane.v(place)))
                .toList();
        double twice = 0;
        for (int i = 1; i + 1 < corners.size(); i++) {
            twice += corners.get(i)
                    .minus(corners.get(0))
                    .cross(corners.get(i + 1).minus(corners.get(0)));
        }
        return new Ring(List.copyOf(places), corners, twice / 2);
    }

    /** The narrowest of some rings that a hole lies in; it may touch it. */
    static Optional<Ring> around(Ring hole, List<Ring> outsides) {
        return outsides.stream()
                .filter(outside -> outside.area >= -hole.area && outside.holds(hole))
                .min(Comparator.comparingDouble(Ring::area));
    }

    private boolean holds(Ring hole) {
        var closed = new Coordinate[corners.size() + 1];
        for (int i = 0; i < closed.length; i++) {
            closed[i] = coordinate(corners.get(i % corners.size()));
        }
        return hole.corners.stream().allMatch(corner -> PointLocation.isInRing(coordinate(corner), closed));
    }

    private static Coordinate coordinate(Vec2 corner) {
        return new Coordinate(corner.x(), corner.y());
    }
}
