package org.standwright.design.wall.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Interval;

class RunsTest {
    private static Runs runs(double... ends) {
        var runs = new ArrayList<Interval>();
        for (int i = 0; i < ends.length; i += 2) {
            runs.add(new Interval(ends[i], ends[i + 1]));
        }
        return new Runs(runs);
    }

    @Test
    void aHangerHangsAnywhereOnARunThatIsLonger() {
        assertThat(runs(100, 600).supports(200)).containsExactly(new Interval(100, 400));
    }

    @Test
    void aHangerAsLongAsARunHasOnePlace() {
        assertThat(runs(100, 600).supports(500)).containsExactly(new Interval(100, 100));
    }

    @Test
    void aHangerLongerThanARunHasNoPlaceOnIt() {
        assertThat(runs(100, 600).supports(500.1)).isEmpty();
    }

    @Test
    void aHangerBridgesAGapWithThirtyMillimetresAtEachEnd() {
        // left end from 430 - 300 = 130 to 300 - 30 = 270; else on one run only
        assertThat(runs(0, 300, 400, 700).supports(300))
                .containsExactly(new Interval(0, 0), new Interval(130, 270), new Interval(400, 400));
    }

    @Test
    void aHangerOverAGapLongerThanHalfOfItHasNoPlace() {
        assertThat(runs(0, 200, 350, 500).supports(300)).isNotEmpty();
        assertThat(runs(0, 200, 350.1, 500).supports(300)).isEmpty();
    }

    @Test
    void whatLiesOnRunsBetweenCountsForTheHalf() {
        assertThat(runs(0, 50, 170, 330, 450, 500).supports(500)).containsExactly(new Interval(0, 0));
        assertThat(runs(0, 50, 450, 500).supports(500)).isEmpty();
    }

    @Test
    void aHangerShorterThanBothEndsStaysOnOneRun() {
        assertThat(runs(0, 100, 110, 200).supports(50)).containsExactly(new Interval(0, 50), new Interval(110, 150));
    }
}
