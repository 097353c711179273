package org.standwright.design.top;

import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** From where a board is seen square to its faces: one that lies, or one that stands across the carcass. */
enum Seen {
    FROM_ABOVE {
        @Override
        Rect of(Box3 box) {
            return new Rect(
                    box.min().x(), box.min().y(), box.max().x(), box.max().y());
        }

        @Override
        Vec3 point(double across, double up) {
            return new Vec3(across, up, 0);
        }
    },
    FROM_FRONT {
        @Override
        Rect of(Box3 box) {
            return new Rect(
                    box.min().x(), box.min().z(), box.max().x(), box.max().z());
        }

        @Override
        Vec3 point(double across, double up) {
            return new Vec3(across, 0, up);
        }
    };

    abstract Rect of(Box3 box);

    /** A point of the assembly that is seen at these coordinates. */
    abstract Vec3 point(double across, double up);
}
