package org.standwright.solid.exact;

import java.util.List;
import org.standwright.geom.Vec3;

/**
 * A part by its exact boundary. Every edge is used twice, once in each direction.
 *
 * @param corners where edges end
 * @param shells one for each piece that the part falls into, of one face at least
 * @param facets flat triangles that stand for round surfaces which could not be made exact; 0 as a rule
 */
public record ExactSolid(List<Vec3> corners, List<Edge> edges, List<List<Face>> shells, int facets) {
    public ExactSolid {
        corners = List.copyOf(corners);
        edges = List.copyOf(edges);
        shells = shells.stream().map(List::copyOf).toList();
    }

    /** From one corner to another, or round to the same. */
    public record Edge(int from, int to, Curve curve) {}

    /** An edge as a face has it: along its direction, or against it. */
    public record Use(int edge, boolean along) {}

    /**
     * A piece of a surface.
     *
     * @param start of a round one: which way from the axis angles begin, so that a seam lies at 0
     * @param loops around it, the outer one first: counter-clockwise seen from outside the solid, holes the other way
     */
    public record Face(Surface surface, Vec3 start, List<List<Use>> loops) {
        public Face {
            loops = loops.stream().map(List::copyOf).toList();
        }
    }

    /** Whether no surface had to stay a mesh. */
    public boolean isExact() {
        return facets == 0;
    }
}
