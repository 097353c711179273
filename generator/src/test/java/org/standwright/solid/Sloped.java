package org.standwright.solid;

import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Vec3;

/** What a feature takes whose section changes with height; told by its sections, mm. */
sealed interface Sloped permits Bore, BevelStrip, Sink {
    /** Between two neighbours of these every corner of a section moves in a straight line. */
    DoubleStream heights();

    /** What it takes at one height, seen from above: convex, or nothing. */
    Geometry at(double height);

    /** Distance of a point to its surface, as far as that is neither level nor upright; infinite beyond its ends, mm. */
    double distance(Vec3 point);

    /** Distance of a point to the edges in which its own sloping sides meet; infinite if it has but one, mm. */
    double innerDistance(Vec3 point);

    default double low() {
        return heights().min().orElseThrow();
    }

    default double high() {
        return heights().max().orElseThrow();
    }

    /** Around all of it, seen from above. */
    default Envelope around() {
        var around = new Envelope();
        heights().forEach(height -> around.expandToInclude(at(height).getEnvelopeInternal()));
        return around;
    }
}
