package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {
    @Test
    void leavesLabelsThatDoNotTouchWhereTheyAre() {
        assertThat(Spread.apart(List.of(10.0, 30.0), List.of(4.0, 6.0))).containsExactly(10.0, 30.0);
    }

    @Test
    void pushesTwoLabelsApartEvenly() {
        assertThat(Spread.apart(List.of(10.0, 11.0), List.of(5.0, 5.0))).containsExactly(8.0, 13.0);
    }

    @Test
    void aRowThatMeetsItsNeighbourMovesWithIt() {
        assertThat(Spread.apart(List.of(10.0, 10.0, 16.0), List.of(6.0, 6.0, 6.0)))
                .containsExactly(6.0, 12.0, 18.0);
    }
}
