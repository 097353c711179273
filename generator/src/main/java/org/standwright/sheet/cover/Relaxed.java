package org.standwright.sheet.cover;

import java.util.Arrays;
import java.util.List;

/** The rest of a choice of patterns as a linear program; of each type, a pattern gives no more than is still needed. */
final class Relaxed {
    final CoveringProgram program;

    private final Column[] columns;
    private final int[] patternOf;

    Relaxed(List<Pattern> patterns, int[] needed, int[] available, int[] most, double penalty) {
        int[] rowOfType = new int[needed.length];
        int rows = 0;
        for (int type = 0; type < needed.length; type++) {
            rowOfType[type] = needed[type] > 0 ? rows++ : -1;
        }
        int[] rowOfKind = new int[available.length];
        long pieces =
                Arrays.stream(needed).filter(need -> need > 0).asLongStream().sum();
        for (int kind = 0; kind < available.length; kind++) {
            rowOfKind[kind] = available[kind] < pieces ? rows++ : -1;
        }
        double[] all = new double[rows];
        for (int type = 0; type < needed.length; type++) {
            if (rowOfType[type] >= 0) {
                all[rowOfType[type]] = needed[type];
            }
        }
        for (int kind = 0; kind < available.length; kind++) {
            if (rowOfKind[kind] >= 0) {
                all[rowOfKind[kind]] = -available[kind];
            }
        }
        program = new CoveringProgram(all, penalty);
        patternOf = new int[patterns.size()];
        columns = new Column[patterns.size()];
        int next = 0;
        for (int j = 0; j < patterns.size(); j++) {
            if (most[j] > 0) {
                var column = column(patterns.get(j), needed, rowOfType, rows);
                int limit = rowOfKind[patterns.get(j).kind()];
                columns[next] = limit < 0 ? column : column.and(limit, -1);
                program.add(columns[next]);
                patternOf[next++] = j;
            }
        }
    }

    private static Column column(Pattern pattern, int[] needed, int[] rowOfType, int rows) {
        int[] given = new int[rows];
        for (int type = 0; type < needed.length; type++) {
            if (rowOfType[type] >= 0) {
                given[rowOfType[type]] = Math.min(pattern.counts()[type], needed[type]);
            }
        }
        return Column.of(pattern.cost(), given);
    }

    /** By pattern. */
    double[] amounts() {
        double[] amounts = new double[patternOf.length];
        double[] ofColumns = program.amounts();
        for (int column = 0; column < ofColumns.length; column++) {
            amounts[patternOf[column]] = ofColumns[column];
        }
        return amounts;
    }

    /** How often each pattern may be used, never where one use would cost more than the slack beyond the least. */
    int[] useful(int[] most, double slack) {
        int[] fewer = new int[most.length];
        double[] prices = program.prices();
        for (int column = 0; column < program.columnCount(); column++) {
            boolean useful = columns[column].reducedCost(prices) <= slack;
            fewer[patternOf[column]] = useful ? most[patternOf[column]] : 0;
        }
        return fewer;
    }
}
