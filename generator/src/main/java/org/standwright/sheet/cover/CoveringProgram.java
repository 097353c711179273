package org.standwright.sheet.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear program: the least cost of amounts x ≥ 0 of columns that together give at least what is needed of each row.
 * A need below 0 with amounts below 0 limits the use of columns. Columns may be added at any time, and solving goes on
 * from the last basis.
 *
 * <p>Revised simplex method with the inverse of the basis kept in full (G. Dantzig, W. Orchard-Hays, 1954), meant for
 * some hundred rows. The column that saves most per unit enters, and after long standstill the first one that saves
 * (R. Bland, New finite pivoting rules for the simplex method, 1977), so that it ends. The same columns in the same
 * order give the same answer to the last bit.
 */
public final class CoveringProgram {
    private static final double TINY = 1e-9;
    private static final double SMALLEST_PIVOT = 1e-7;
    private static final int PIVOTS_BEFORE_INVERTING = 120;
    private static final int STANDSTILL = 200;

    private final int rows;
    private final double[] needed;
    private final double penalty;
    private final List<Column> columns = new ArrayList<>();
    /** What is basic in each row: a column, or -1 - r for what row r has too much, or rows + r more for what it lacks. */
    private final int[] basis;

    private final double[][] inverse;
    private final double[] amounts;
    private final double[] prices;
    private int pivots;

    /**
     * @param needed of each row
     * @param penalty cost of each unit that is lacking, above that of any column that gives it
     */
    public CoveringProgram(double[] needed, double penalty) {
        rows = needed.length;
        this.needed = needed.clone();
        this.penalty = penalty;
        basis = new int[rows];
        inverse = new double[rows][rows];
        amounts = new double[rows];
        prices = new double[rows];
        for (int row = 0; row < rows; row++) {
            basis[row] = needed[row] > 0 ? lacking(row) : surplus(row);
        }
        invert();
    }

    private static int surplus(int row) {
        return -1 - row;
    }

    private int lacking(int row) {
        return -1 - rows - row;
    }

    public void add(Column column) {
        columns.add(column);
    }

    public int columnCount() {
        return columns.size();
    }

    /**
     * Goes on until no column saves anything.
     *
     * @return false if it gave up after so many pivots; prices and amounts are then those of the last basis
     */
    public boolean solve(int mostPivots) {
        int standstill = 0;
        for (int pivot = 0; pivot < mostPivots; pivot++) {
            int entering = entering(standstill > STANDSTILL);
            if (entering == Integer.MIN_VALUE) {
                return true;
            }
            double[] direction = direction(entering);
            int leaving = leaving(direction);
            if (leaving < 0) {
                throw new IllegalStateException("columns of a covering program give without end at no cost.");
            }
            standstill = amounts[leaving] > TINY ? 0 : standstill + 1;
            exchange(entering, leaving, direction);
        }
        return false;
    }

    /** The column that saves, {@code MIN_VALUE} for none. */
    private int entering(boolean first) {
        int best = Integer.MIN_VALUE;
        double saving = -TINY * Math.max(1, penalty * 1e-6);
        for (int row = 0; row < rows; row++) {
            if (prices[row] < saving) {
                best = surplus(row);
                saving = prices[row];
                if (first) {
                    return best;
                }
            }
        }
        for (int j = 0; j < columns.size(); j++) {
            double reduced = columns.get(j).reducedCost(prices);
            if (reduced < saving) {
                best = j;
                saving = reduced;
                if (first) {
                    return best;
                }
            }
        }
        return best;
    }

    /** How the basic amounts fall as the column enters. */
    private double[] direction(int entering) {
        double[] direction = new double[rows];
        if (entering < 0) {
            for (int i = 0; i < rows; i++) {
                direction[i] = -inverse[i][-1 - entering];
            }
            return direction;
        }
        var column = columns.get(entering);
        for (int i = 0; i < rows; i++) {
            double[] line = inverse[i];
            double sum = 0;
            for (int k = 0; k < column.rows().length; k++) {
                sum += line[column.rows()[k]] * column.amounts()[k];
            }
            direction[i] = sum;
        }
        return direction;
    }

    private int leaving(double[] direction) {
        int leaving = -1;
        double least = 0;
        for (int i = 0; i < rows; i++) {
            if (direction[i] > SMALLEST_PIVOT) {
                double ratio = Math.max(0, amounts[i]) / direction[i];
                boolean less = leaving < 0 || ratio < least - TINY;
                boolean same = leaving >= 0 && ratio <= least + TINY;
                if (less || same && before(i, leaving, direction)) {
                    least = less ? ratio : Math.min(ratio, least);
                    leaving = i;
                }
            }
        }
        return leaving;
    }

    /** Of two rows that would leave, what is lacking first, then the larger pivot. */
    private boolean before(int i, int other, double[] direction) {
        boolean lacks = basis[i] < -rows;
        boolean otherLacks = basis[other] < -rows;
        return lacks != otherLacks ? lacks : direction[i] > direction[other];
    }

    private void exchange(int entering, int leaving, double[] direction) {
        basis[leaving] = entering;
        if (++pivots % PIVOTS_BEFORE_INVERTING == 0) {
            invert();
            return;
        }
        double reduced =
                entering < 0 ? prices[-1 - entering] : columns.get(entering).reducedCost(prices);
        double pivot = direction[leaving];
        double[] line = inverse[leaving];
        for (int k = 0; k < rows; k++) {
            line[k] /= pivot;
        }
        amounts[leaving] /= pivot;
        for (int i = 0; i < rows; i++) {
            double factor = direction[i];
            if (i != leaving && factor != 0) {
                double[] other = inverse[i];
                for (int k = 0; k < rows; k++) {
                    other[k] -= factor * line[k];
                }
                amounts[i] -= factor * amounts[leaving];
            }
        }
        for (int k = 0; k < rows; k++) {
            prices[k] += reduced * line[k];
        }
    }

    /** Works the inverse out anew, which takes rounding errors away. */
    private void invert() {
        double[][] work = new double[rows][2 * rows];
        for (int k = 0; k < rows; k++) {
            work[k][rows + k] = 1;
            int basic = basis[k];
            if (basic >= 0) {
                var column = columns.get(basic);
                for (int e = 0; e < column.rows().length; e++) {
                    work[column.rows()[e]][k] = column.amounts()[e];
                }
            } else {
                int row = basic >= -rows ? -1 - basic : -1 - rows - basic;
                work[row][k] = basic >= -rows ? -1 : 1;
            }
        }
        eliminate(work);
        for (int i = 0; i < rows; i++) {
            System.arraycopy(work[i], rows, inverse[i], 0, rows);
            double amount = 0;
            for (int k = 0; k < rows; k++) {
                amount += inverse[i][k] * needed[k];
            }
            amounts[i] = amount;
        }
        price();
    }

    private void eliminate(double[][] work) {
        for (int k = 0; k < rows; k++) {
            int best = k;
            for (int i = k + 1; i < rows; i++) {
                if (Math.abs(work[i][k]) > Math.abs(work[best][k])) {
                    best = i;
                }
            }
            double[] line = work[best];
            work[best] = work[k];
            work[k] = line;
            double pivot = line[k];
            for (int c = k; c < 2 * rows; c++) {
                line[c] /= pivot;
            }
            for (int i = 0; i < rows; i++) {
                double factor = work[i][k];
                if (i != k && factor != 0) {
                    double[] other = work[i];
                    for (int c = k; c < 2 * rows; c++) {
                        other[c] -= factor * line[c];
                    }
                }
            }
        }
    }

    private void price() {
        Arrays.fill(prices, 0);
        for (int i = 0; i < rows; i++) {
            int basic = basis[i];
            double cost = basic >= 0 ? columns.get(basic).cost() : basic < -rows ? penalty : 0;
            if (cost != 0) {
                for (int k = 0; k < rows; k++) {
                    prices[k] += cost * inverse[i][k];
                }
            }
        }
    }

    /** What one unit more of each row would cost, none below 0 but for rounding. */
    public double[] prices() {
        return prices.clone();
    }

    /** Amount of each column. */
    public double[] amounts() {
        double[] all = new double[columns.size()];
        for (int i = 0; i < rows; i++) {
            if (basis[i] >= 0) {
                all[basis[i]] = Math.max(0, amounts[i]);
            }
        }
        return all;
    }

    /** Cost of the amounts, with the penalty for what is lacking. */
    public double cost() {
        double cost = 0;
        for (int i = 0; i < rows; i++) {
            int basic = basis[i];
            cost += amounts[i] * (basic >= 0 ? columns.get(basic).cost() : basic < -rows ? penalty : 0);
        }
        return cost;
    }

    /** Whether columns give all that is needed. */
    public boolean isCovered() {
        for (int i = 0; i < rows; i++) {
            if (basis[i] < -rows && amounts[i] > 1e-6) {
                return false;
            }
        }
        return true;
    }
}
