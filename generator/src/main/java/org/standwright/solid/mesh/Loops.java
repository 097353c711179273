package org.standwright.solid.mesh;

import java.util.Arrays;
import org.standwright.solid.mesh.face.Corners;

/**
 * Strings the edges of one plane after the other together to loops with the faces to the left. Where several loops meet
 * in a point, each goes on along the face it has come by: the inside of a loop is never pinched off there.
 */
final class Loops {
    private static final int NONE = -1;

    private final Edges edges;
    /** By point: an edge of the plane at hand that starts there. */
    private final int[] first;
    /** By edge: another one that starts at the same point. */
    private final int[] other;

    private final boolean[] used;

    Loops(Edges edges, int points) {
        this.edges = edges;
        first = new int[points];
        Arrays.fill(first, NONE);
        other = new int[edges.count()];
        used = new boolean[edges.count()];
    }

    /** Adds the loops of the edges from {@code start} to {@code end}, all on one plane, to {@code corners}. */
    void trace(int start, int end, Flat flat, Corners corners) {
        for (int edge = start; edge < end; edge++) {
            other[edge] = first[edges.from(edge)];
            first[edges.from(edge)] = edge;
        }
        for (int edge = start; edge < end; edge++) {
            if (!used[edge]) {
                loop(edge, flat, corners);
            }
        }
        for (int edge = start; edge < end; edge++) {
            first[edges.from(edge)] = NONE;
        }
    }

    private void loop(int start, Flat flat, Corners corners) {
        int edge = start;
        do {
            if (used[edge]) {
                throw new BrokenMeshException("the boundary of a face crosses itself");
            }
            used[edge] = true;
            int from = edges.from(edge);
            corners.add(from, flat.u(from), flat.v(from));
            edge = next(edge, flat);
        } while (edge != start);
        corners.closeLoop();
    }

    private int next(int edge, Flat flat) {
        int at = edges.to(edge);
        int best = first[at];
        if (best == NONE) {
            throw new BrokenMeshException("the boundary of a face ends nowhere");
        }
        for (int rival = other[best]; rival != NONE; rival = other[rival]) {
            if (flat.isSooner(at, edges.from(edge), edges.to(rival), edges.to(best))) {
                best = rival;
            }
        }
        return best;
    }
}
