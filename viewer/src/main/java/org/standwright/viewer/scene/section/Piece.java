package org.standwright.viewer.scene.section;

import org.standwright.solid.PlacedSolid;
import org.standwright.viewer.scene.surface.Surface;

/** What a section keeps of one solid. */
public sealed interface Piece {
    PlacedSolid placed();

    /** All of it, as it was. */
    record Whole(PlacedSolid placed) implements Piece {}

    /**
     * A solid that the plane goes through. Both surfaces are in the frame of the part and together closed; parts of one
     * workpiece that are cut alike share them.
     *
     * @param rest what is left of its surface
     * @param cap the cut face
     */
    record Cut(PlacedSolid placed, Surface rest, Surface cap) implements Piece {
        /** mm³. */
        public double volume() {
            return rest.volume() + cap.volume();
        }
    }
}
