package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.design.built.HeightStack;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.unit.Units;

class PrintedStackTest {
    /** Added by hand: each of 18.25 mm is shown as 18.3, so the carcass of 763.5 is shown as 763.4. */
    @Test
    void theCarcassTakesUpWhatTheOtherTermsWereRoundedBy() {
        var terms = List.of(
                new Term("levelers", 100, 15, 20),
                Term.fixed("carcass", 763.5),
                Term.fixed("worktop layer 1", 18.25),
                Term.fixed("worktop layer 2", 18.25));
        var printed = PrintedStack.of(new HeightStack(terms, 900), Units.MM);

        assertThat(printed.layers())
                .extracting(layer -> Units.MM.bareLength(layer.height()))
                .containsExactly("100", "763.4", "18.3", "18.3");
        assertThat(Units.MM.bareLength(printed.sum().height())).isEqualTo("900");
        assertThat(printed.sum().lowest()).isCloseTo(885, within(1e-9));
        assertThat(printed.sum().highest()).isCloseTo(920, within(1e-9));
    }

    /** Added by hand: 72 mm are 2.8346 in, shown as 2 27/32 (2.84375); 34 less that is 31 5/32. */
    @Test
    void fractionsAddUpAsTheyArePrinted() {
        var terms = List.of(Term.fixed("carcass", 34 * 25.4 - 72), Term.fixed("four boards", 72));
        var printed = PrintedStack.of(new HeightStack(terms, 34 * 25.4), Units.INCH);

        assertThat(printed.layers())
                .extracting(layer -> Units.INCH.bareLength(layer.height()))
                .containsExactly("31 5/32", "2 27/32");
        assertThat(printed.carcass().isAdjustable()).isFalse();
    }
}
