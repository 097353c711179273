package org.standwright.viewer.scene.around;

import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;

/**
 * The figure of a person, made of rounded pieces. Places are shares of the stature: x to its right, y forwards, z up;
 * common proportions, from memory.
 */
final class BodyShape {
    /** Height of the shoulder. */
    static final double SHOULDER = 0.81;

    /** How far the hands reach forwards. */
    static final double REACH = 0.25;

    private static final int SIDES = 12;
    private static final double ARM = 0.132;
    private static final double LEG = 0.052;

    /** Heights, then half widths and half depths there, from the hip to the neck. */
    private static final double[][] TRUNK = {
        {0.45, 0.060, 0.045},
        {0.49, 0.100, 0.062},
        {0.53, 0.100, 0.066},
        {0.61, 0.080, 0.054},
        {0.72, 0.100, 0.066},
        {0.79, 0.118, 0.056},
        {0.822, 0.100, 0.042},
        {0.838, 0.038, 0.036},
        {0.88, 0.032, 0.034}
    };

    private static final double[][] HEAD = {
        {0.868, 0.016, 0.020},
        {0.88, 0.034, 0.044},
        {0.905, 0.043, 0.056},
        {0.945, 0.046, 0.060},
        {0.975, 0.038, 0.050},
        {0.993, 0.022, 0.028},
        {1.0, 0.006, 0.008}
    };

    private static final double[][] LEGS = {
        {0.02, 0.026, 0.030}, {0.06, 0.024, 0.028}, {0.20, 0.035, 0.038},
        {0.28, 0.033, 0.036}, {0.40, 0.045, 0.048}, {0.48, 0.048, 0.055}
    };

    /** Forwards, then half widths and half heights. */
    private static final double[][] FOOT = {
        {-0.045, 0.018, 0.016}, {-0.02, 0.026, 0.02}, {0.06, 0.029, 0.02}, {0.095, 0.024, 0.014}, {0.105, 0.01, 0.008}
    };

    private static final double[][] FOREARM = {
        {-0.026, 0.014, 0.014},
        {-0.01, 0.025, 0.026},
        {0.05, 0.026, 0.027},
        {0.14, 0.018, 0.018},
        {0.19, 0.024, 0.014},
        {REACH, 0.012, 0.009}
    };

    private final Figure figure;
    private final SurfaceBuilder builder = new SurfaceBuilder();

    BodyShape(Figure figure) {
        this.figure = figure;
    }

    Surface surface() {
        upright(0, 0, TRUNK);
        upright(0, 0.008, HEAD);
        for (int side = -1; side <= 1; side += 2) {
            upright(side * LEG, 0, LEGS);
            forwards(side * LEG, 0.02, FOOT);
            upright(side * ARM, 0, upperArm());
            forwards(side * ARM, figure.elbow() / figure.stature(), FOREARM);
        }
        return builder.build();
    }

    /** From the elbow to the shoulder. */
    private double[][] upperArm() {
        double elbow = figure.elbow() / figure.stature();
        return new double[][] {
            {elbow - 0.022, 0.016, 0.016},
            {elbow, 0.025, 0.026},
            {(elbow + SHOULDER) / 2, 0.027, 0.031},
            {SHOULDER - 0.03, 0.031, 0.036},
            {SHOULDER - 0.005, 0.026, 0.030},
            {SHOULDER + 0.006, 0.012, 0.014}
        };
    }

    private void upright(double x, double y, double[][] rings) {
        var points = new int[rings.length][];
        for (int i = 0; i < rings.length; i++) {
            var ring = rings[i];
            points[i] = ring(new Vec3(x, y, ring[0]), new Vec3(ring[1], 0, 0), new Vec3(0, ring[2], 0));
        }
        hull(points);
    }

    private void forwards(double x, double z, double[][] rings) {
        var points = new int[rings.length][];
        for (int i = 0; i < rings.length; i++) {
            var ring = rings[i];
            points[i] = ring(new Vec3(x, ring[0], z), new Vec3(0, 0, ring[2]), new Vec3(ring[1], 0, 0));
        }
        hull(points);
    }

    /** Points all round an ellipse of these half axes. */
    private int[] ring(Vec3 centre, Vec3 a, Vec3 b) {
        var ring = new int[SIDES];
        for (int i = 0; i < SIDES; i++) {
            double angle = 2 * Math.PI * i / SIDES;
            var at = centre.plus(a.times(StrictMath.cos(angle))).plus(b.times(StrictMath.sin(angle)));
            ring[i] = builder.point(figure.feet().plus(at.times(figure.stature())));
        }
        return ring;
    }

    private void hull(int[][] rings) {
        for (int i = 0; i + 1 < rings.length; i++) {
            for (int j = 0; j < SIDES; j++) {
                int next = (j + 1) % SIDES;
                builder.quad(rings[i][j], rings[i][next], rings[i + 1][next], rings[i + 1][j]);
            }
        }
        var first = rings[0];
        var last = rings[rings.length - 1];
        for (int j = 1; j + 1 < SIDES; j++) {
            builder.triangle(first[0], first[j + 1], first[j]);
            builder.triangle(last[0], last[j], last[j + 1]);
        }
    }
}
