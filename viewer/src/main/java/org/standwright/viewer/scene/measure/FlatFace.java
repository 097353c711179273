package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.dot;

import java.util.List;
import org.standwright.geom.Vec3;

/**
 * A flat face.
 *
 * @param normal out of the solid, length 1
 * @param at how far out along the normal its plane lies from the origin, mm
 */
public record FlatFace(Vec3 normal, double at, List<Triangle> triangles) implements Face {
    public FlatFace {
        triangles = List.copyOf(triangles);
    }

    /** How far a point lies before the plane, below 0 behind it, mm. */
    double before(Vec3 point) {
        return dot(normal, point) - at;
    }
}
