package org.standwright.part;

import org.standwright.geom.Outline;
import org.standwright.geom.Require;

/**
 * The outline that a part is cut to when it is no rectangle: all of the blank that lies outside goes, right through.
 *
 * @param outline within the blank, in part coordinates
 * @param purpose what it is for, for the machining notes: 'sloped top', 'bracket'
 */
public record Contour(Outline outline, String purpose) implements Feature {
    public Contour {
        Require.named("purpose of a contour", purpose);
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.contour(this);
    }
}
