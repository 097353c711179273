package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PullThroughTest {
    /** Cells of NDS 2018 Table 12.2F, quoted by a public source file [S]: by the formula and as printed. */
    @ParameterizedTest
    @CsvSource({"0.50, 0.234, 0.3125, 39.63, 40", "0.50, 0.312, 1, 131.88, 132", "0.42, 0.500, 1.5, 238.99, 239"})
    void holdsARoundHead(double gravity, double head, double side, double formula, double printed) {
        double pounds = PullThrough.allowable(head * Customary.INCH, gravity, side * Customary.INCH)
                        .orElseThrow()
                / Customary.POUND;

        assertThat(pounds).isCloseTo(formula, within(0.01)).isCloseTo(printed, within(0.5));
    }

    /** A #10's head in plywood 3/4 in thick: 104.1 lbf, 463 N; own calculation. */
    @Test
    void holdsThisMuchOfACleat() {
        assertThat(PullThrough.allowable(NumberedScrew.NO_10.head(), 0.42, 19.05)
                        .orElseThrow())
                .isCloseTo(463, within(0.5));
    }

    @Test
    void ratesNoThicknessThatItsTableLeavesOut() {
        assertThat(PullThrough.allowable(8, 0.42, 6)).isEmpty();
        assertThat(PullThrough.allowable(8, 0.42, 40)).isEmpty();
    }
}
