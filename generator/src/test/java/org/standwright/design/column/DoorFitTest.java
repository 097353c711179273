package org.standwright.design.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.Content;
import org.standwright.design.Hung;
import org.standwright.design.kit.Side;
import org.standwright.geom.Rect;

/** Doors on a plain opening 400 wide, inset with a gap of 3. */
class DoorFitTest {
    @Test
    void hangsAHigherDoorOnMoreHinges() {
        // common practice, no source: two up to 900 mm, three up to 1600, four above; 100 mm from the ends
        assertThat(hinges(900)).containsExactly(100.0, 800.0);
        assertThat(hinges(1000)).containsExactly(100.0, 500.0, 900.0);
        assertThat(hinges(1700)).containsExactly(100.0, 600.0, 1100.0, 1600.0);
        assertThat(hinges(200)).containsExactly(40.0, 160.0);
    }

    @Test
    void movesAHingeOffAFixedShelf() {
        // the shelf from 90 to 108 above the opening keeps 40 below and above it free: 50 or 148
        assertThat(hinges(600, 90.0)).containsExactly(148.0 - 3, 500.0);
        assertThat(hinges(600, 100.0)).containsExactly(60.0 - 3, 500.0);
    }

    @Test
    void meetsAPairInTheMiddleWithOneGap() {
        var doors = fit(Hung.PAIR, 500, List.of()).doors(new Rect(3, 3, 397, 497), 3, List.of("1.1", "1.2"));

        assertThat(doors.get(0).front()).isEqualTo(new Rect(3, 3, 198.5, 497));
        assertThat(doors.get(1).front()).isEqualTo(new Rect(201.5, 3, 397, 497));
        assertThat(doors.get(0).hung()).isEqualTo(Side.LEFT);
        assertThat(doors.get(1).hung()).isEqualTo(Side.RIGHT);
    }

    private static List<Double> hinges(double height, Double... shelves) {
        return fit(Hung.LEFT, height + 6, List.of(shelves))
                .doors(new Rect(3, 3, 397, height + 3), 3, List.of("1.1"))
                .get(0)
                .hinges();
    }

    private static DoorFit fit(Hung hung, double opening, List<Double> shelves) {
        var door = new Content.Door(OptionalDouble.empty(), Mixed.CONCEALED, hung, Optional.empty());
        return new DoorFit(door, new Rect(0, 0, 400, opening), 18, shelves);
    }
}
