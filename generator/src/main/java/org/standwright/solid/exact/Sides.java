package org.standwright.solid.exact;

import java.util.Arrays;
import org.standwright.solid.Solid;

/** The sides of a closed mesh's triangles: side 3 t + c runs from corner c of triangle t to the next corner. */
final class Sides {
    private static final int POINT_BITS = 21;
    private static final int SIDE_BITS = 22;

    private final Solid solid;
    private final int[] twins;

    Sides(Solid solid) {
        this.solid = solid;
        this.twins = new int[3 * solid.triangleCount()];
        var keys = new long[twins.length];
        for (int side = 0; side < keys.length; side++) {
            long low = Math.min(from(side), to(side));
            long high = Math.max(from(side), to(side));
            keys[side] = (low << POINT_BITS | high) << SIDE_BITS | side;
        }
        Arrays.sort(keys);
        for (int i = 0; i < keys.length; i += 2) {
            int one = (int) (keys[i] & (1 << SIDE_BITS) - 1);
            int other = (int) (keys[i + 1] & (1 << SIDE_BITS) - 1);
            twins[one] = other;
            twins[other] = one;
        }
    }

    int count() {
        return twins.length;
    }

    int from(int side) {
        return solid.corner(side / 3, side % 3);
    }

    int to(int side) {
        return from(next(side));
    }

    /** The side of the neighbour, which runs the other way. */
    int twin(int side) {
        return twins[side];
    }

    static int triangle(int side) {
        return side / 3;
    }

    /** The next of the same triangle. */
    static int next(int side) {
        return side % 3 == 2 ? side - 2 : side + 1;
    }

    /** The one before it of the same triangle. */
    static int before(int side) {
        return side % 3 == 0 ? side + 2 : side - 1;
    }
}
