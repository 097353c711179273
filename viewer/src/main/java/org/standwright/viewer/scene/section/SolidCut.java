package org.standwright.viewer.scene.section;

import java.util.Optional;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;
import org.standwright.viewer.scene.surface.Surface;

/** What a plane makes of one solid: all, nothing or a piece. */
sealed interface SolidCut {
    Optional<Piece> of(PlacedSolid placed);

    record All() implements SolidCut {
        @Override
        public Optional<Piece> of(PlacedSolid placed) {
            return Optional.of(new Piece.Whole(placed));
        }
    }

    record Nothing() implements SolidCut {
        @Override
        public Optional<Piece> of(PlacedSolid placed) {
            return Optional.empty();
        }
    }

    record Some(Surface rest, Surface cap) implements SolidCut {
        @Override
        public Optional<Piece> of(PlacedSolid placed) {
            return Optional.of(new Piece.Cut(placed, rest, cap));
        }
    }

    static SolidCut of(Solid solid, PartPlane plane) {
        var beyond = new double[solid.vertexCount()];
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] = plane.beyond(solid.vertex(i));
            least = Math.min(least, beyond[i]);
            most = Math.max(most, beyond[i]);
        }
        if (most <= 0) {
            return new All();
        }
        return least >= 0 ? new Nothing() : new Clipping(solid, plane, beyond).done();
    }
}
