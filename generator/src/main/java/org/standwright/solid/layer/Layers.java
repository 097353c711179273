package org.standwright.solid.layer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Shell;

/** From footprints that meet to the surface that they leave. */
public final class Layers {
    /** Layers in a long, the sky above them included. */
    private static final int MOST = 62;

    private Layers() {}

    /**
     * Adds to {@code shell} what the cuts change in the surface of a board from z = 0 to {@code thickness}: with a blank
     * the whole surface of what is left of it, without one only the difference from a board that goes on for ever.
     *
     * @param cuts that meet each other and nothing else
     * @throws BrokenMeshException when the cuts have too many different depths for this way
     */
    public static void add(Shell shell, Planes planes, Optional<Ring> blank, List<Footprint> cuts, int thickness) {
        var rings = new ArrayList<Ring>();
        blank.ifPresent(rings::add);
        cuts.forEach(cut -> rings.add(cut.ring()));
        var levels = levels(cuts, thickness);
        if (levels.length > MOST) {
            throw new BrokenMeshException("it has too many different depths");
        }
        long board = (1L << levels.length - 1) - 1;
        var taken = new long[rings.size()];
        for (int i = 0; i < cuts.size(); i++) {
            taken[rings.size() - cuts.size() + i] = taken(cuts.get(i), levels);
        }
        var arrangement = Arrangement.of(rings);
        var solidity = new Solidity(
                arrangement, windings -> solid(blank.isPresent() && windings[0] <= 0 ? 0 : board, taken, windings));
        new Walls(arrangement, solidity, levels, planes, shell).add();
    }

    private static long solid(long board, long[] taken, int[] windings) {
        long solid = board;
        for (int ring = 0; ring < windings.length; ring++) {
            if (windings[ring] > 0) {
                solid &= ~taken[ring];
            }
        }
        return solid;
    }

    /** All heights at which something begins or ends, from the board's lower face to its upper one. */
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
