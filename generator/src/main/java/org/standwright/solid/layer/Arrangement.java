package org.standwright.solid.layer;

import java.util.Arrays;
import java.util.List;

/**
 * Rings drawn into each other: each ring is a closed chain of steps from spot to spot, and steps of several rings that
 * join the same two spots are one piece. Pieces share nothing but spots at their ends.
 */
final class Arrangement {
    private final Ring[] rings;
    private final Spots spots;
    private final Pieces pieces = new Pieces();
    /** Where the steps of each ring begin. */
    private final int[] firsts;

    private int[] starts = new int[128];
    private int[] pieceOf = new int[128];
    private int[] sideOf = new int[128];
    private int count;

    private Arrangement(List<Ring> rings, Spots spots) {
        this.rings = rings.toArray(Ring[]::new);
        this.spots = spots;
        firsts = new int[rings.size() + 1];
    }

    static Arrangement of(List<Ring> rings) {
        var arrangement = new Arrangement(rings, Crossings.of(rings));
        arrangement.draw();
        return arrangement;
    }

    private void draw() {
        var hits = new SideHits(spots);
        for (int ring = 0; ring < rings.length; ring++) {
            firsts[ring] = count;
            for (int side = 0; side < rings[ring].size(); side++) {
                draw(ring, side, hits);
            }
            close(ring);
        }
        firsts[rings.length] = count;
    }

    private void draw(int ring, int side, SideHits hits) {
        int on = hits.find(rings[ring], side);
        for (int i = 0; i + 1 < on; i++) {
            add(hits.spot(i), side);
        }
    }

    private void add(int spot, int side) {
        if (count == starts.length) {
            starts = Arrays.copyOf(starts, 2 * count);
            pieceOf = Arrays.copyOf(pieceOf, 2 * count);
            sideOf = Arrays.copyOf(sideOf, 2 * count);
        }
        starts[count] = spot;
        sideOf[count++] = side;
    }

    private void close(int ring) {
        for (int step = firsts[ring]; step < count; step++) {
            int to = starts[step + 1 == count ? firsts[ring] : step + 1];
            pieceOf[step] = pieces.join(starts[step], to, step);
        }
    }

    Spots spots() {
        return spots;
    }

    Pieces pieces() {
        return pieces;
    }

    int ringCount() {
        return rings.length;
    }

    Ring ring(int ring) {
        return rings[ring];
    }

    int firstStep(int ring) {
        return firsts[ring];
    }

    /** One past the last step of a ring. */
    int endOfSteps(int ring) {
        return firsts[ring + 1];
    }

    int from(int step) {
        return starts[step];
    }

    int piece(int step) {
        return pieceOf[step];
    }

    /** The side of its ring that a step lies on. */
    int side(int step) {
        return sideOf[step];
    }

    int ringOf(int step) {
        int ring = Arrays.binarySearch(firsts, step);
        if (ring < 0) {
            return -ring - 2;
        }
        while (firsts[ring + 1] == step) {
            ring++;
        }
        return ring;
    }
}
