package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.sheet.job.SawnSheet;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.search.Search;

class PerfectPlanTest {
    /**
     * In a tenth of a second or so each. Measured: 20 of 20 with 10 pieces and with 20; the floors leave room for one
     * that is missed.
     */
    @ParameterizedTest(name = "{0} pieces: {1} of 100 at least")
    @CsvSource({"10, 95", "20, 95"})
    void findsMostSheetsAgainThatWereSawnAtRandom(int pieces, int least) {
        long seeds = Seeds.fewOrMany(20, 400).count();

        long found = Seeds.fewOrMany(20, 400)
                .filter(seed -> isFoundAgain(seed, pieces))
                .count();

        assertThat(100 * found).isGreaterThanOrEqualTo(least * seeds);
    }

    private static boolean isFoundAgain(long seed, int pieces) {
        var found = Search.run(SawnSheet.random(seed, pieces), 1, Budget.rounds(15, 0), better -> {});
        return found.answers().get(0).cost() == 1;
    }
}
