package org.standwright.viewer.scene.section;

import java.util.Optional;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/**
 * A plane square to an axis of the assembly, and the side of it that is kept.
 *
 * @param at its place along the axis, mm; counts to the nearest 1/1024 mm
 */
public record SectionPlane(Across across, double at, Kept kept) {
    /** The axis that the plane is square to. */
    public enum Across {
        X,
        Y,
        Z;

        /** A point's place along the axis. */
        public double of(Vec3 point) {
            return this == X ? point.x() : this == Y ? point.y() : point.z();
        }

        private Vec3 moved(Vec3 point, double to) {
            return new Vec3(this == X ? to : point.x(), this == Y ? to : point.y(), this == Z ? to : point.z());
        }
    }

    /** Which side of the plane stays. */
    public enum Kept {
        /** All with smaller coordinates: what is left of it, before it or below it. */
        LOWER,
        /** All with larger coordinates. */
        HIGHER
    }

    /** Its place on the grid of the solids, mm. */
    double onGrid() {
        return (double) Math.round(at * Solid.PER_MM) / Solid.PER_MM;
    }

    /** What it keeps of a box; nothing where the box is beyond it or only touches it. */
    public Optional<Box3> kept(Box3 box) {
        double low = across.of(box.min());
        double high = across.of(box.max());
        if (kept == Kept.LOWER) {
            return Grid.less(low, at)
                    ? Optional.of(new Box3(box.min(), across.moved(box.max(), Math.min(at, high))))
                    : Optional.empty();
        }
        return Grid.less(at, high)
                ? Optional.of(new Box3(across.moved(box.min(), Math.max(at, low)), box.max()))
                : Optional.empty();
    }
}
