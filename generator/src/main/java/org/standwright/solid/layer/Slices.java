package org.standwright.solid.layer;

import java.util.Arrays;
import java.util.List;
import org.standwright.solid.mesh.BrokenMeshException;

/** The layers of a board between the heights at which its cuts begin and end; bit i is the i-th from below. */
final class Slices {
    /** Levels that go with layers into a long, the sky above them included. */
    private static final int MOST = 62;

    private final int[] levels;
    private final boolean hasBlank;
    /** What each ring takes; a blank's takes nothing. */
    private final long[] taken;

    private Slices(int[] levels, boolean hasBlank, long[] taken) {
        this.levels = levels;
        this.hasBlank = hasBlank;
        this.taken = taken;
    }

    /**
     * @param hasBlank whether the first ring is the blank's and those of the cuts follow
     * @throws BrokenMeshException when there are too many heights
     */
    static Slices of(boolean hasBlank, List<Footprint> cuts, int thickness) {
        var levels = levels(cuts, thickness);
        if (levels.length > MOST) {
            throw new BrokenMeshException("it has too many different depths");
        }
        int blanks = hasBlank ? 1 : 0;
        var taken = new long[blanks + cuts.size()];
        for (int i = 0; i < cuts.size(); i++) {
            taken[blanks + i] = taken(cuts.get(i), levels);
        }
        return new Slices(levels, hasBlank, taken);
    }

    /** All heights at which something begins or ends, from the board's lower face to its upper one. */
    int[] levels() {
        return levels;
    }

    /** The layers that are left where the rings go round so many times each. */
    long left(int[] windings) {
        if (hasBlank && windings[0] <= 0) {
            return 0;
        }
        long left = (1L << levels.length - 1) - 1;
        for (int ring = 0; ring < windings.length; ring++) {
            if (windings[ring] > 0) {
                left &= ~taken[ring];
            }
        }
        return left;
    }

    private static int[] levels(List<Footprint> cuts, int thickness) {
        var levels = new int[2 * cuts.size() + 2];
        levels[1] = thickness;
        for (int i = 0; i < cuts.size(); i++) {
            levels[2 * i + 2] = within(cuts.get(i).bottom(), thickness);
            levels[2 * i + 3] = within(cuts.get(i).top(), thickness);
        }
        Arrays.sort(levels);
        int kept = 1;
        for (int level : levels) {
            if (level != levels[kept - 1]) {
                levels[kept++] = level;
            }
        }
        return Arrays.copyOf(levels, kept);
    }

    private static long taken(Footprint cut, int[] levels) {
        long taken = 0;
        for (int i = 0; i + 1 < levels.length; i++) {
            if (cut.bottom() <= levels[i] && levels[i + 1] <= cut.top()) {
                taken |= 1L << i;
            }
        }
        return taken;
    }

    private static int within(int z, int thickness) {
        return Math.max(0, Math.min(thickness, z));
    }
}
