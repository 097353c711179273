package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Point2;

/** Expected forces balance 100 N and its moments about both axes, by hand. */
class MachineFeetTest {
    private static final Offset<Double> CLOSE = Offset.offset(1e-9);
    private static final Point2 A = new Point2(0, 0);
    private static final Point2 B = new Point2(100, 0);
    private static final Point2 C = new Point2(0, 100);
    private static final Point2 D = new Point2(100, 100);

    @Test
    void shareByLeversInBothWays() {
        bear(new Point2(50, 50), List.of(A, B, C, D), 25, 25, 25, 25);
        bear(new Point2(75, 50), List.of(A, B, C, D), 12.5, 37.5, 12.5, 37.5);
        bear(new Point2(60, 70), List.of(A, B, C, D), 10, 20, 30, 40);
    }

    /** Three have only one way to balance. */
    @Test
    void shareOnThreeAsStaticsSays() {
        bear(new Point2(20, 30), List.of(A, B, C), 50, 20, 30);
    }

    /** 65, 25, 25 and -15 on four: B and C bear 10 each and D 80 when A is lifted. */
    @Test
    void leaveALiftedFootOut() {
        bear(new Point2(90, 90), List.of(A, B, C, D), 10, 10, 80);
        bear(new Point2(150, 50), List.of(A, B, C, D), 50, 50);
        bear(new Point2(150, 150), List.of(A, B, C, D), 100);
    }

    @Test
    void inALineShareAlongIt() {
        bear(new Point2(75, 20), List.of(A, B), 25, 75);
        bear(new Point2(75, 75), List.of(A, D), 25, 75);
        bear(new Point2(75, 20), List.of(C), 100);
    }

    private static void bear(Point2 centre, List<Point2> feet, double... forces) {
        var bearing = new MachineFeet(feet, 100, centre).feet();

        assertThat(bearing).hasSize(forces.length);
        for (int i = 0; i < forces.length; i++) {
            assertThat(bearing.get(i).force()).isCloseTo(forces[i], CLOSE);
        }
    }
}
