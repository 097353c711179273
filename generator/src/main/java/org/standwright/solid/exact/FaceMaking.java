package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.standwright.geom.Vec3;
import org.standwright.solid.exact.ExactSolid.Face;
import org.standwright.solid.exact.ExactSolid.Use;

/** From a region and its borders to a face. */
final class FaceMaking {
    private final Model model;
    private final Borders borders;
    private final Seams seams;
    private final Corners corners;
    private final Edges edges;

    FaceMaking(Model model, Borders borders, Seams seams, Corners corners, Edges edges) {
        this.model = model;
        this.borders = borders;
        this.seams = seams;
        this.corners = corners;
        this.edges = edges;
    }

    Face face(int region) {
        var loops = new ArrayList<>(borders.around(region));
        if (loops.size() > 1) {
            loops.sort(Comparator.comparingDouble(loop -> -Math.abs(area(region, loop))));
        }
        var uses = new ArrayList<List<Use>>();
        for (var loop : loops) {
            uses.add(edges.along(loop));
        }
        var round = model.round(region);
        if (round.isPresent()) {
            var start = seams.of(region).map(Seam::out).orElseGet(() -> outside(round.get(), loops.get(0)));
            return new Face(round.get(), start, uses);
        }
        return new Face(model.surface(region).orElseGet(() -> facet(loops.get(0))), Vec3.ZERO, uses);
    }

    /** The plane of a loose triangle as its corners lie now. */
    private Plane facet(int[] loop) {
        var a = corners.place(model.sides().from(loop[0]));
        var b = corners.place(model.sides().from(loop[1]));
        var c = corners.place(model.sides().from(loop[2]));
        return Plane.through(a, b.minus(a).cross(c.minus(a)));
    }

    /** Twice what a loop encloses, flat or unrolled. */
    private double area(int region, int[] loop) {
        var round = model.round(region);
        double area = 0;
        for (int side : loop) {
            if (round.isPresent()) {
                var axis = round.get();
                double turn = Turning.between(axis.axis(), axis.arm(model.from(side)), axis.arm(model.to(side)));
                area += turn * (axis.height(model.from(side)) + axis.height(model.to(side)));
            } else {
                var plane = (Plane) model.surface(region).orElseThrow();
                area += plane.normal().dot(model.from(side).cross(model.to(side)));
            }
        }
        return area;
    }

    /** Which way from the axis a patch doesn't lie: into the middle of the widest gap between corners of its border. */
    private Vec3 outside(Round round, int[] loop) {
        var zero = round.arm(model.from(loop[0])).unit();
        var angles = new double[loop.length + 1];
        for (int i = 0; i < loop.length; i++) {
            angles[i] = Turning.left(round.axis(), zero, round.arm(model.from(loop[i])));
        }
        angles[loop.length] = 2 * Math.PI;
        Arrays.sort(angles);
        double widest = 0;
        double middle = 0;
        for (int i = 1; i < angles.length; i++) {
            if (angles[i] - angles[i - 1] > widest) {
                widest = angles[i] - angles[i - 1];
                middle = (angles[i] + angles[i - 1]) / 2;
            }
        }
        return zero.times(StrictMath.cos(middle)).plus(round.axis().cross(zero).times(StrictMath.sin(middle)));
    }
}
