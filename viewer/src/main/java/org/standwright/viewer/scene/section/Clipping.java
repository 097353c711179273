package org.standwright.viewer.scene.section;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;
import org.standwright.viewer.scene.surface.SurfaceBuilder;

/**
 * Cuts one solid. Every edge that the plane goes through gets one new point, which its two triangles share, so that what
 * is left has a rim of closed rings; the cap has the same rings the other way round.
 */
final class Clipping {
    private static final int UNUSED = -1;

    private final Solid solid;
    private final PartPlane plane;
    private final double[] beyond;
    private final SurfaceBuilder rest = new SurfaceBuilder();
    private final int[] kept;
    private final Map<Long, Integer> newPoints = new HashMap<>();
    private final Rims rims;

    /** @param beyond how far every vertex lies beyond the plane itself, mm */
    Clipping(Solid solid, PartPlane plane, double[] beyond) {
        this.solid = solid;
        this.plane = plane;
        this.beyond = beyond;
        this.kept = new int[beyond.length];
        this.rims = new Rims(plane);
        Arrays.fill(kept, UNUSED);
    }

    SolidCut.Some done() {
        for (int triangle = 0; triangle < solid.triangleCount(); triangle++) {
            clip(solid.corner(triangle, 0), solid.corner(triangle, 1), solid.corner(triangle, 2));
        }
        return new SolidCut.Some(rest.build(), rims.cap());
    }

    private void clip(int a, int b, int c) {
        int count = (isKept(a) ? 1 : 0) + (isKept(b) ? 1 : 0) + (isKept(c) ? 1 : 0);
        if (count == 3) {
            rest.triangle(point(a), point(b), point(c));
        } else if (count > 0) {
            boolean one = count == 1;
            // the corner that is alone on its side comes first
            if (isKept(b) == one && isKept(a) != one && isKept(c) != one) {
                clip(b, c, a, one);
            } else if (isKept(c) == one && isKept(a) != one && isKept(b) != one) {
                clip(c, a, b, one);
            } else {
                clip(a, b, c, one);
            }
        }
    }

    private void clip(int alone, int next, int last, boolean keepsOne) {
        int from = crossing(alone, next);
        int to = crossing(last, alone);
        if (keepsOne) {
            rest.triangle(point(alone), from, to);
            rims.add(to, from);
        } else {
            rest.quad(from, point(next), point(last), to);
            rims.add(from, to);
        }
    }

    private boolean isKept(int vertex) {
        return beyond[vertex] < plane.shift();
    }

    private int point(int vertex) {
        if (kept[vertex] == UNUSED) {
            kept[vertex] = rest.point(solid.vertex(vertex));
        }
        return kept[vertex];
    }

    /** The same point from both ends of an edge. */
    private int crossing(int a, int b) {
        int low = Math.min(a, b);
        int high = Math.max(a, b);
        return newPoints.computeIfAbsent((long) low << 32 | high, edge -> newPoint(low, high));
    }

    private int newPoint(int low, int high) {
        double before = beyond[low] - plane.shift();
        double behind = beyond[high] - plane.shift();
        var from = solid.vertex(low);
        var to = solid.vertex(high);
        var at = inPlane(from.plus(to.minus(from).times(before / (before - behind))));
        int index = rest.point(at);
        rims.place(index, at);
        return index;
    }

    private Vec3 inPlane(Vec3 point) {
        return new Vec3(
                plane.axis() == 0 ? plane.cut() : point.x(),
                plane.axis() == 1 ? plane.cut() : point.y(),
                plane.axis() == 2 ? plane.cut() : point.z());
    }
}
