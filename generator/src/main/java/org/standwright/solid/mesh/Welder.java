package org.standwright.solid.mesh;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Gives points that are the same up to rounding one number. The kernel reaches one point by different ways and leaves
 * it some 1e-9 mm apart; two different points are seldom closer than 1e-5 mm.
 */
final class Welder {
    /** Cells to a grid unit: a cell is 4e-5 mm wide and has the grid's points in the middle of theirs. */
    private static final double CELLS = 25;
    /** Beyond this share of a cell a point may belong to the next one. */
    private static final double RIM = 0.25;

    private record Cell(long x, long y, long z) {}

    private final Map<Cell, Integer> known = new HashMap<>();
    private final Points points = new Points();

    Points points() {
        return points;
    }

    int number(double x, double y, double z) {
        var home = new Cell(Math.round(x * CELLS), Math.round(y * CELLS), Math.round(z * CELLS));
        int there = Optional.ofNullable(known.get(home))
                .or(() -> beside(home, x * CELLS - home.x, y * CELLS - home.y, z * CELLS - home.z))
                .orElseGet(() -> points.add(x, y, z));
        known.put(home, there);
        return there;
    }

    private Optional<Integer> beside(Cell home, double x, double y, double z) {
        for (long i = x < -RIM ? -1 : 0; i <= (x > RIM ? 1 : 0); i++) {
            for (long j = y < -RIM ? -1 : 0; j <= (y > RIM ? 1 : 0); j++) {
                for (long k = z < -RIM ? -1 : 0; k <= (z > RIM ? 1 : 0); k++) {
                    var there = known.get(new Cell(home.x + i, home.y + j, home.z + k));
                    if (there != null) {
                        return Optional.of(there);
                    }
                }
            }
        }
        return Optional.empty();
    }
}
