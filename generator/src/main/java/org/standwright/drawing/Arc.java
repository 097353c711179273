package org.standwright.drawing;

import org.standwright.geom.Require;

/**
 * A part of a circle.
 *
 * @param start direction of its first point from the centre, degrees counter-clockwise from x
 * @param sweep how far it turns, degrees, counter-clockwise when positive; 360 is the whole circle
 */
public record Arc(Point centre, double radius, double start, double sweep, Pen pen) implements Shape {
    public Arc {
        Require.positive("radius", radius, "arc");
        if (!(Math.abs(sweep) > 0 && Math.abs(sweep) <= 360)) {
            throw new IllegalArgumentException("sweep of an arc is " + sweep + "°; it must be within 360° and not 0.");
        }
    }

    /** The point reached after turning by {@code degrees} from the start. */
    public Point at(double degrees) {
        double angle = StrictMath.toRadians(start + degrees);
        return new Point(centre.x() + radius * StrictMath.cos(angle), centre.y() + radius * StrictMath.sin(angle));
    }

    @Override
    public <R> R accept(ShapeVisitor<R> visitor) {
        return visitor.arc(this);
    }
}
