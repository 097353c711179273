package org.standwright.sheet.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.plan.Seeds;

class CoveringProgramTest {
    private static final double PENALTY = 1000;

    static LongStream seeds() {
        return Seeds.fewOrMany(40, 1000);
    }

    @Test
    void takesPartsOfColumns() {
        // of three things one each, every column gives two of them: half of each column
        var program = new CoveringProgram(new double[] {1, 1, 1}, PENALTY);
        program.add(Column.of(1, new int[] {1, 1, 0}));
        program.add(Column.of(1, new int[] {0, 1, 1}));
        program.add(Column.of(1, new int[] {1, 0, 1}));

        assertThat(program.solve(100)).isTrue();
        assertThat(program.cost()).isCloseTo(1.5, within(1e-9));
        assertThat(program.amounts()).containsExactly(new double[] {0.5, 0.5, 0.5}, within(1e-9));
        assertThat(program.prices()).containsExactly(new double[] {0.5, 0.5, 0.5}, within(1e-9));
    }

    @Test
    void saysWhenColumnsDoNotCoverAll() {
        var program = new CoveringProgram(new double[] {2, 1}, PENALTY);
        program.add(Column.of(1, new int[] {1, 0}));
        program.solve(100);

        assertThat(program.isCovered()).isFalse();
        program.add(Column.of(3, new int[] {0, 1}));
        program.solve(100);
        assertThat(program.isCovered()).isTrue();
        assertThat(program.cost()).isCloseTo(5, within(1e-9));
    }

    /** Against the simplex solver of Apache Commons Math 3.6.1; the last row limits the first columns. */
    @ParameterizedTest
    @MethodSource("seeds")
    void findsTheCostThatAnotherSolverFinds(long seed) {
        var random = new SplittableRandom(seed);
        int rows = random.nextInt(1, 12);
        double[] needed = new double[rows + 1];
        for (int row = 0; row < rows; row++) {
            needed[row] = random.nextInt(0, 9);
        }
        needed[rows] = -random.nextInt(1, 4);
        var columns = columns(rows, random);

        var program = new CoveringProgram(needed, PENALTY);
        int half = columns.size() / 2;
        columns.subList(0, half).forEach(program::add);
        program.solve(10_000);
        columns.subList(half, columns.size()).forEach(program::add);

        assertThat(program.solve(10_000)).isTrue();
        assertThat(program.cost()).isCloseTo(elsewhere(columns, needed), within(1e-6));
        double worth = 0;
        for (int row = 0; row <= rows; row++) {
            worth += program.prices()[row] * needed[row];
        }
        assertThat(worth).isCloseTo(program.cost(), within(1e-6));
    }

    private static List<Column> columns(int rows, SplittableRandom random) {
        var columns = new ArrayList<Column>();
        for (int row = 0; row < rows; row++) {
            int[] alone = new int[rows];
            alone[row] = 1;
            columns.add(Column.of(random.nextInt(3, 6), alone));
        }
        int more = random.nextInt(1, 40);
        for (int j = 0; j < more; j++) {
            int[] counts = random.ints(rows, 0, 4).toArray();
            var column = Column.of(random.nextInt(1, 5), counts);
            columns.add(j < 5 ? column.and(rows, -1) : column);
        }
        return columns;
    }

    /** The most that what is needed can be worth when no column is worth more than its cost: the same by duality. */
    private static double elsewhere(List<Column> columns, double[] needed) {
        var constraints = new ArrayList<LinearConstraint>();
        for (var column : columns) {
            double[] line = new double[needed.length];
            for (int k = 0; k < column.rows().length; k++) {
                line[column.rows()[k]] = column.amounts()[k];
            }
            constraints.add(new LinearConstraint(line, Relationship.LEQ, column.cost()));
        }
        return new SimplexSolver()
                .optimize(
                        new MaxIter(100_000),
                        new LinearObjectiveFunction(needed, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }
}
