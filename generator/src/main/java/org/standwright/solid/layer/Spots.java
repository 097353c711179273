package org.standwright.solid.layer;

import java.util.Arrays;
import org.standwright.solid.mesh.Quadruples;

/** Points of the plane's grid, numbered as they come: one place, one number. */
final class Spots {
    private int[] xs = new int[64];
    private int[] ys = new int[64];
    private final Quadruples places = new Quadruples();
    private int count;

    /** The number of a place, a new one if it has none yet. */
    int at(int x, int y) {
        int spot = places.number(x, y, 0, 0);
        if (spot == count) {
            add(x, y);
        }
        return spot;
    }

    int count() {
        return count;
    }

    int x(int spot) {
        return xs[spot];
    }

    int y(int spot) {
        return ys[spot];
    }

    private void add(int x, int y) {
        if (count == xs.length) {
            xs = Arrays.copyOf(xs, 2 * count);
            ys = Arrays.copyOf(ys, 2 * count);
        }
        xs[count] = x;
        ys[count] = y;
        count++;
    }
}
