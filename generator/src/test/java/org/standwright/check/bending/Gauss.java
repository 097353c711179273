package org.standwright.check.bending;

/** Linear equations by elimination. */
final class Gauss {
    private Gauss() {}

    /** Solves any equations, with pivoting. */
    static double[] solve(double[][] rows, double[] values) {
        int n = values.length;
        for (int column = 0; column < n; column++) {
            int best = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(rows[row][column]) > Math.abs(rows[best][column])) {
                    best = row;
                }
            }
            swap(rows, values, column, best);
            for (int row = column + 1; row < n; row++) {
                eliminate(rows, values, column, row, n);
            }
        }
        return back(rows, values, n);
    }

    /** Solves equations whose matrix is symmetric, positive and nought beyond {@code band} from its diagonal. */
    static double[] solveBanded(double[][] rows, double[] values, int band) {
        int n = values.length;
        for (int column = 0; column < n; column++) {
            for (int row = column + 1; row <= Math.min(n - 1, column + band); row++) {
                eliminate(rows, values, column, row, Math.min(n, column + band + 1));
            }
        }
        return back(rows, values, n);
    }

    private static void eliminate(double[][] rows, double[] values, int column, int row, int end) {
        double factor = rows[row][column] / rows[column][column];
        if (factor != 0) {
            for (int i = column; i < end; i++) {
                rows[row][i] -= factor * rows[column][i];
            }
            values[row] -= factor * values[column];
        }
    }

    private static void swap(double[][] rows, double[] values, int one, int other) {
        var row = rows[one];
        rows[one] = rows[other];
        rows[other] = row;
        double value = values[one];
        values[one] = values[other];
        values[other] = value;
    }

    private static double[] back(double[][] rows, double[] values, int n) {
        double[] result = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double sum = values[row];
            for (int i = row + 1; i < n; i++) {
                sum -= rows[row][i] * result[i];
            }
            result[row] = sum / rows[row][row];
        }
        return result;
    }
}
