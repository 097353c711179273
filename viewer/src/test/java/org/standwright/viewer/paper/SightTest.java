package org.standwright.viewer.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Drawing;

class SightTest {
    private static final Offset<Double> SAME = within(1e-9);
    private static final Drawing PAPER = new Drawing("a paper", 200, 100, List.of());

    @Test
    void showsTheWholePaperInTheMiddle() {
        var sight = Sight.whole(PAPER, 424, 424);

        assertThat(sight.scale()).isEqualTo(2);
        assertThat(sight.x(0)).isEqualTo(12);
        assertThat(sight.x(200)).isEqualTo(412);
        assertThat(sight.y(100)).isEqualTo(112);
        assertThat(sight.y(0)).isEqualTo(312);
    }

    @Test
    void findsThePointThatAPixelShows() {
        var point = Sight.whole(PAPER, 424, 424).paper(32, 292);

        assertThat(point.x()).isEqualTo(10);
        assertThat(point.y()).isEqualTo(10);
    }

    @Test
    void keepsWhatIsUnderThePointerThereWhenItZooms() {
        var far = Sight.whole(PAPER, 424, 424);
        var near = far.zoomed(3, 100, 200);

        assertThat(near.scale()).isEqualTo(6);
        assertThat(near.paper(100, 200).x()).isCloseTo(far.paper(100, 200).x(), SAME);
        assertThat(near.paper(100, 200).y()).isCloseTo(far.paper(100, 200).y(), SAME);
    }

    @Test
    void zoomsNoFurtherThanThereIsSomethingToSee() {
        var sight = Sight.whole(PAPER, 424, 424);

        assertThat(sight.zoomed(1e6, 0, 0).scale()).isEqualTo(60);
        assertThat(sight.zoomed(1e-6, 0, 0).scale()).isEqualTo(0.05);
    }

    @Test
    void neverLosesThePaperOutOfSight() {
        var lost = Sight.whole(PAPER, 424, 424).moved(-5000, 5000).held(PAPER, 424, 424);

        assertThat(lost.x(200)).isEqualTo(48);
        assertThat(lost.y(100)).isEqualTo(424 - 48);
    }
}
