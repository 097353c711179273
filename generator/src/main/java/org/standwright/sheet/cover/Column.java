package org.standwright.sheet.cover;

import java.util.Arrays;
import java.util.stream.IntStream;

/** What one column gives of each thing: {@code amounts[k]} of {@code rows[k]}, nothing of the others. */
public record Column(double cost, int[] rows, double[] amounts) {
    /** Of a pattern that has {@code counts[i]} pieces of type i. */
    public static Column of(double cost, int[] counts) {
        int[] rows = IntStream.range(0, counts.length)
                .filter(row -> counts[row] != 0)
                .toArray();
        return new Column(
                cost, rows, Arrays.stream(rows).mapToDouble(row -> counts[row]).toArray());
    }

    /** This column with an amount in one more row. */
    public Column and(int row, double amount) {
        int[] moreRows = Arrays.copyOf(rows, rows.length + 1);
        double[] moreAmounts = Arrays.copyOf(amounts, amounts.length + 1);
        moreRows[rows.length] = row;
        moreAmounts[rows.length] = amount;
        return new Column(cost, moreRows, moreAmounts);
    }

    /** What it is worth when each thing has a price. */
    double worth(double[] prices) {
        double worth = 0;
        for (int k = 0; k < rows.length; k++) {
            worth += prices[rows[k]] * amounts[k];
        }
        return worth;
    }

    /** Cost less worth: what is saved by using it if below 0. */
    public double reducedCost(double[] prices) {
        return cost - worth(prices);
    }
}
