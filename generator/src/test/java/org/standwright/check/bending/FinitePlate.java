package org.standwright.check.bending;

import java.util.function.IntBinaryOperator;

/**
 * A plate on supports along its edges, solved by the thirteen-point finite differences of D ∇⁴w = q; a node beyond an edge
 * moves as much up as its mirror image moves down. Knows none of the formulas under test.
 */
final class FinitePlate {
    private static final int CELLS = 32;
    private static final int INNER = CELLS - 1;

    private final double stepX;
    private final double stepY;
    private final double rigidity;
    private double[] bent;

    FinitePlate(double overX, double overY, double rigidity) {
        this.stepX = overX / CELLS;
        this.stepY = overY / CELLS;
        this.rigidity = rigidity;
    }

    FinitePlate uniform(double pressure) {
        return solve((x, y) -> 1, pressure);
    }

    FinitePlate centre(double load) {
        return solve((x, y) -> x == CELLS / 2 && y == CELLS / 2 ? 1 : 0, load / (stepX * stepY));
    }

    private FinitePlate solve(IntBinaryOperator where, double pressure) {
        double[][] rows = new double[INNER * INNER][INNER * INNER];
        double[] values = new double[INNER * INNER];
        double xx = 1 / (stepX * stepX);
        double yy = 1 / (stepY * stepY);
        for (int x = 1; x < CELLS; x++) {
            for (int y = 1; y < CELLS; y++) {
                var row = rows[index(x, y)];
                put(row, x, y, 6 * xx * xx + 6 * yy * yy + 8 * xx * yy);
                for (int way = -1; way <= 1; way += 2) {
                    put(row, x + way, y, -4 * xx * xx - 4 * xx * yy);
                    put(row, x, y + way, -4 * yy * yy - 4 * xx * yy);
                    put(row, x + 2 * way, y, xx * xx);
                    put(row, x, y + 2 * way, yy * yy);
                    put(row, x + way, y + way, 2 * xx * yy);
                    put(row, x + way, y - way, 2 * xx * yy);
                }
                values[index(x, y)] = where.applyAsInt(x, y) * pressure / rigidity;
            }
        }
        bent = Gauss.solveBanded(rows, values, 2 * INNER);
        return this;
    }

    private static void put(double[] row, int x, int y, double factor) {
        if (x == 0 || y == 0 || x == CELLS || y == CELLS) {
            return;
        }
        double sign = x < 0 || y < 0 || x > CELLS || y > CELLS ? -1 : 1;
        row[index(mirror(x), mirror(y))] += sign * factor;
    }

    private static int mirror(int node) {
        return node < 0 ? -node : node > CELLS ? 2 * CELLS - node : node;
    }

    private static int index(int x, int y) {
        return (x - 1) * INNER + y - 1;
    }

    private double at(int x, int y) {
        return x <= 0 || y <= 0 || x >= CELLS || y >= CELLS ? 0 : bent[index(x, y)];
    }

    double middle() {
        return at(CELLS / 2, CELLS / 2);
    }

    /** Bending moment along x in the middle, N. */
    double momentX(double poisson) {
        return rigidity * (curveX(CELLS / 2, CELLS / 2) + poisson * curveY(CELLS / 2, CELLS / 2));
    }

    /** Reaction in the middle of the edge x = 0, N/mm: D ∂/∂x (w_xx + (2 − ν) w_yy), both nought on the edge itself. */
    double reactionX(double poisson) {
        int y = CELLS / 2;
        double near = inner(1, y, poisson);
        double far = inner(2, y, poisson);
        return rigidity * (4 * near - far) / (2 * stepX);
    }

    private double inner(int x, int y, double poisson) {
        return curveX(x, y) + (2 - poisson) * curveY(x, y);
    }

    private double curveX(int x, int y) {
        return -(at(x - 1, y) - 2 * at(x, y) + at(x + 1, y)) / (stepX * stepX);
    }

    private double curveY(int x, int y) {
        return -(at(x, y - 1) - 2 * at(x, y) + at(x, y + 1)) / (stepY * stepY);
    }
}
