package org.standwright.viewer.scene.surface;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/** Puts a surface together, triangle by triangle. */
public final class SurfaceBuilder {
    /** The six sides of a box, counter-clockwise from outside; bit 0 of a corner is x, bit 1 y, bit 2 z. */
    private static final int[][] SIDES = {
        {0, 4, 6, 2}, {1, 3, 7, 5}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 2, 3, 1}, {4, 5, 7, 6}
    };

    private double[] points = new double[24];
    private int[] triangles = new int[36];
    private int pointEnd;
    private int triangleEnd;

    /** The index of a new point. */
    public int point(double x, double y, double z) {
        if (pointEnd == points.length) {
            points = Arrays.copyOf(points, 2 * pointEnd);
        }
        points[pointEnd] = x;
        points[pointEnd + 1] = y;
        points[pointEnd + 2] = z;
        pointEnd += 3;
        return pointEnd / 3 - 1;
    }

    public int point(Vec3 at) {
        return point(at.x(), at.y(), at.z());
    }

    public SurfaceBuilder triangle(int a, int b, int c) {
        if (triangleEnd == triangles.length) {
            triangles = Arrays.copyOf(triangles, 2 * triangleEnd);
        }
        triangles[triangleEnd] = a;
        triangles[triangleEnd + 1] = b;
        triangles[triangleEnd + 2] = c;
        triangleEnd += 3;
        return this;
    }

    /** Two triangles between four points in turn. */
    public SurfaceBuilder quad(int a, int b, int c, int d) {
        return triangle(a, b, c).triangle(a, c, d);
    }

    /** All sides of a box. */
    public SurfaceBuilder box(Box3 box) {
        var corners = new int[8];
        for (int i = 0; i < 8; i++) {
            corners[i] = point(
                    ((i & 1) == 0 ? box.min() : box.max()).x(),
                    ((i & 2) == 0 ? box.min() : box.max()).y(),
                    ((i & 4) == 0 ? box.min() : box.max()).z());
        }
        for (var side : SIDES) {
            quad(corners[side[0]], corners[side[1]], corners[side[2]], corners[side[3]]);
        }
        return this;
    }

    /** A square rod from one point to another that is not the same, its ends cut square. */
    public SurfaceBuilder rod(Vec3 from, Vec3 to, double thickness) {
        var way = to.minus(from);
        // any direction that is far from the rod's own
        var helper = Math.abs(way.x()) <= Math.min(Math.abs(way.y()), Math.abs(way.z()))
                ? new Vec3(1, 0, 0)
                : Math.abs(way.y()) <= Math.abs(way.z()) ? new Vec3(0, 1, 0) : new Vec3(0, 0, 1);
        var u = half(cross(way, helper), thickness);
        var v = half(cross(way, u), thickness);
        var near = corners(from, u, v);
        var far = corners(to, u, v);
        for (int i = 0; i < 4; i++) {
            quad(near[i], near[(i + 1) % 4], far[(i + 1) % 4], far[i]);
        }
        return quad(near[3], near[2], near[1], near[0]).quad(far[0], far[1], far[2], far[3]);
    }

    /** A flat region seen from its front. */
    public SurfaceBuilder region(FlatRegion region, Function<Vec2, Vec3> place) {
        int from = pointEnd / 3;
        region.corners().forEach(corner -> point(place.apply(corner)));
        for (var triangle : region.triangles()) {
            triangle(from + triangle[0], from + triangle[1], from + triangle[2]);
        }
        return this;
    }

    /** A slab: a flat region, the same turned over behind it, and its edges all round. */
    public SurfaceBuilder slab(FlatRegion region, Function<Vec2, Vec3> front, Function<Vec2, Vec3> behind) {
        int from = pointEnd / 3;
        region(region, front);
        int back = pointEnd / 3;
        region.corners().forEach(corner -> point(behind.apply(corner)));
        for (var triangle : region.triangles()) {
            triangle(back + triangle[2], back + triangle[1], back + triangle[0]);
        }
        edges(region.rim(), from, back);
        region.holes().forEach(hole -> edges(hole, from, back));
        return this;
    }

    private void edges(List<Integer> ring, int front, int back) {
        for (int i = 0; i < ring.size(); i++) {
            int a = ring.get(i);
            int b = ring.get((i + 1) % ring.size());
            quad(front + a, back + a, back + b, front + b);
        }
    }

    private int[] corners(Vec3 centre, Vec3 u, Vec3 v) {
        return new int[] {
            point(centre.plus(u).plus(v)),
            point(centre.minus(u).plus(v)),
            point(centre.minus(u).minus(v)),
            point(centre.plus(u).minus(v))
        };
    }

    private static Vec3 half(Vec3 direction, double thickness) {
        double length = Math.sqrt(
                direction.x() * direction.x() + direction.y() * direction.y() + direction.z() * direction.z());
        return direction.times(thickness / 2 / length);
    }

    private static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }

    public Surface build() {
        return new Surface(Arrays.copyOf(points, pointEnd), Arrays.copyOf(triangles, triangleEnd));
    }
}
