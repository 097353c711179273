package org.standwright.viewer.scene.surface;

import javafx.scene.transform.Affine;
import org.standwright.assembly.Placement;

/** A placement as the screen wants it. */
public final class PlacementTransform {
    private PlacementTransform() {}

    public static Affine of(Placement placement) {
        var x = placement.along().unit();
        var y = placement.across().unit();
        var z = placement.through().unit();
        var origin = placement.origin();
        return new Affine(
                x.x(), y.x(), z.x(), origin.x(), x.y(), y.y(), z.y(), origin.y(), x.z(), y.z(), z.z(), origin.z());
    }
}
