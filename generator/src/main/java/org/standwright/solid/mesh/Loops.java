package org.standwright.solid.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Strings the edges of one plane together to loops. */
final class Loops {
    private final EdgeChain chain;
    private final Flat flat;
    private final int[] byStart;
    private final boolean[] used;

    private Loops(EdgeChain chain, int start, int end, Flat flat) {
        this.chain = chain;
        this.flat = flat;
        var keys = new long[end - start];
        for (int edge = start; edge < end; edge++) {
            keys[edge - start] = (long) chain.from(edge) << 32 | edge;
        }
        Arrays.sort(keys);
        byStart = Arrays.stream(keys).mapToInt(key -> (int) key).toArray();
        used = new boolean[byStart.length];
    }

    /**
     * Loops of points with the faces to the left. Where several loops meet in a point, each goes on along the face it
     * has come by: the inside of a loop is never pinched off there.
     */
    static List<int[]> of(EdgeChain chain, int start, int end, Flat flat) {
        return new Loops(chain, start, end, flat).trace();
    }

    private List<int[]> trace() {
        var loops = new ArrayList<int[]>();
        for (int slot = 0; slot < used.length; slot++) {
            if (!used[slot]) {
                loops.add(loop(slot));
            }
        }
        return loops;
    }

    private int[] loop(int start) {
        var loop = new int[used.length];
        int length = 0;
        int slot = start;
        do {
            if (used[slot]) {
                throw new BrokenMeshException("the boundary of a face crosses itself");
            }
            used[slot] = true;
            loop[length++] = chain.from(byStart[slot]);
            slot = next(byStart[slot]);
        } while (slot != start);
        return Arrays.copyOf(loop, length);
    }

    private int next(int edge) {
        int at = chain.to(edge);
        int best = firstFrom(at);
        for (int slot = best + 1; slot < byStart.length && chain.from(byStart[slot]) == at; slot++) {
            if (flat.isSooner(at, chain.from(edge), chain.to(byStart[slot]), chain.to(byStart[best]))) {
                best = slot;
            }
        }
        return best;
    }

    private int firstFrom(int point) {
        int low = 0;
        int high = byStart.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (chain.from(byStart[middle]) < point) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        if (low == byStart.length || chain.from(byStart[low]) != point) {
            throw new BrokenMeshException("the boundary of a face ends nowhere");
        }
        return low;
    }
}
