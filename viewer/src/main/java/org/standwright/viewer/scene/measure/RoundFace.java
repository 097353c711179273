package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.length;
import static org.standwright.viewer.scene.measure.Products.unit;

import java.util.List;
import org.standwright.geom.Vec3;

/**
 * The wall all the way round a hole, or round a post.
 *
 * @param from one end of its axis
 * @param to the other end
 * @param diameter of the circle that the solid's corners stand for, mm
 */
public record RoundFace(Kind kind, Vec3 from, Vec3 to, double diameter, List<Triangle> triangles) implements Face {
    /** On which side of it the wood is. */
    public enum Kind {
        HOLE,
        POST
    }

    public RoundFace {
        triangles = List.copyOf(triangles);
    }

    /** How deep the hole or how long the post is, mm. */
    public double depth() {
        return length(to.minus(from));
    }

    Vec3 axis() {
        return unit(to.minus(from));
    }
}
