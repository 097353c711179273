package org.standwright.check.bending;

import java.util.List;

/**
 * A beam solved by finite differences: E I v⁗ = q at evenly spaced nodes, two nodes beyond each end for its conditions.
 * Knows none of the formulas under test.
 */
final class FiniteBeam {
    private static final int CELLS = 160;
    private static final int NODES = CELLS + 5;

    enum End {
        SIMPLE,
        FIXED,
        FREE
    }

    private final double step;
    private final double stiffness;
    private final double[] bent;

    FiniteBeam(double length, double stiffness, End left, End right, List<SpanLoad> loads) {
        this.step = length / CELLS;
        this.stiffness = stiffness;
        double[][] rows = new double[NODES][NODES];
        double[] right0 = new double[NODES];
        double[] forces = forces(loads);
        for (int node = 2; node <= CELLS + 2; node++) {
            add(rows[node], node, 1, -4, 6, -4, 1);
            right0[node] = forces[node - 2] * step * step * step / stiffness;
        }
        end(rows, right0, left, 2, -1);
        end(rows, right0, right, CELLS + 2, 1);
        this.bent = Gauss.solve(rows, right0);
    }

    /** The row of the end node says v = 0 where it is held; the two rows beyond it hold the other conditions. */
    private static void end(double[][] rows, double[] values, End end, int node, int outward) {
        int first = node + outward;
        int second = node + 2 * outward;
        if (end == End.FREE) {
            add(rows[first], node, 0, 1, -2, 1, 0);
            add(rows[second], node, -1, 2, 0, -2, 1);
            values[node] *= 2; // the end node stands for half a cell only
            return;
        }
        rows[node] = new double[NODES];
        rows[node][node] = 1;
        values[node] = 0;
        rows[first][first] = 1;
        rows[first][node - outward] = end == End.FIXED ? -1 : 1;
        rows[second][second] = 1;
    }

    private static void add(double[] row, int node, double... stencil) {
        for (int i = 0; i < stencil.length; i++) {
            row[node - 2 + i] += stencil[i];
        }
    }

    /** Each small slice of a load goes to the two nodes beside it, by its lever. */
    private double[] forces(List<SpanLoad> loads) {
        int slices = 2000;
        double[] forces = new double[CELLS + 1];
        for (var load : loads) {
            for (int i = 0; i < slices; i++) {
                double at = (load.from() + (load.to() - load.from()) * (i + 0.5) / slices) / step;
                int node = Math.min((int) at, CELLS - 1);
                forces[node] += load.total() / slices * (node + 1 - at);
                forces[node + 1] += load.total() / slices * (at - node);
            }
        }
        return forces;
    }

    double deflection() {
        double most = 0;
        for (int node = 2; node <= CELLS + 2; node++) {
            most = Math.max(most, Math.abs(bent[node]));
        }
        return most;
    }

    double moment() {
        double most = 0;
        for (int node = 2; node <= CELLS + 2; node++) {
            double curve = (bent[node - 1] - 2 * bent[node] + bent[node + 1]) / (step * step);
            most = Math.max(most, Math.abs(stiffness * curve));
        }
        return most;
    }
}
