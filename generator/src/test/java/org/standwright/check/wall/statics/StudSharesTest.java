package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.standwright.check.bending.SimpleSpan;
import org.standwright.check.bending.SpanLoad;

class StudSharesTest {
    private static final List<Double> WALL = List.of(0.0, 400.0, 800.0, 1200.0, 1600.0);

    @Test
    void countsTheStudsWithinAndOneBeyond() {
        assertThat(new StudShares(WALL, 350, 1000).counting()).containsExactly(400.0, 800.0, 1200.0);
        assertThat(new StudShares(WALL, 400, 800).counting()).hasSize(3);
        assertThat(new StudShares(WALL, 0, 1600).counting()).isEqualTo(WALL);
    }

    @Test
    void givesALoadBetweenTwoStudsToTheNearer() {
        assertThat(new StudShares(WALL, 500, 720).counting()).containsExactly(800.0);
        assertThat(new StudShares(WALL, 450, 720).counting()).containsExactly(400.0);
        assertThat(new StudShares(WALL, 500, 720).most()).isEqualTo(1);
    }

    @Test
    void countsTheStudBehindWhenAllHangsBeyondTheLast() {
        var end = new StudShares(WALL, 1650, 1750);

        assertThat(end.counting()).containsExactly(1200.0, 1600.0);
        assertThat(end.byLever().get(0)).isCloseTo(-0.25, within(1e-12));
        assertThat(end.most()).isCloseTo(1.25, within(1e-12));
        assertThat(new StudShares(WALL, -150, -50).most()).isCloseTo(1.25, within(1e-12));
    }

    @Test
    void sharesByTheLeverBetweenNeighbours() {
        assertThat(new StudShares(List.of(0.0, 400.0), 0, 400).byLever()).containsExactly(0.5, 0.5);
        assertThat(new StudShares(List.of(0.0, 400.0), 0, 200).byLever()).containsExactly(0.75, 0.25);
        assertThat(new StudShares(List.of(0.0, 400.0, 800.0), 0, 800).byLever()).containsExactly(0.25, 0.5, 0.25);
    }

    /** 5/4 w L on the middle of three, 3/8 at the ends; 11/10 and 4/10 of four: any table of continuous beams. */
    @Test
    void givesTheMiddleOfThreeMoreIfTheStripIsInOnePiece() {
        var three = new StudShares(List.of(0.0, 400.0, 800.0), 0, 800);
        var four = new StudShares(List.of(0.0, 400.0, 800.0, 1200.0), 0, 1200);

        assertThat(three.inOnePiece().get(1)).isCloseTo(1.25 / 2, within(1e-12));
        assertThat(three.inOnePiece().get(0)).isCloseTo(0.375 / 2, within(1e-12));
        assertThat(four.inOnePiece().get(0)).isCloseTo(0.4 / 3, within(1e-12));
        assertThat(four.inOnePiece().get(1)).isCloseTo(1.1 / 3, within(1e-12));
        assertThat(four.inOnePiece().get(2)).isCloseTo(1.1 / 3, within(1e-12));
        assertThat(three.most()).isCloseTo(0.625, within(1e-12));
    }

    /** Three studs, the middle one as the force that lifts the sag of the whole length back to nothing. */
    @Test
    void agreesWithTheForceThatTakesTheSagOutOfAStrip() {
        var random = new SplittableRandom(51);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            double one = random.nextDouble(200, 600);
            double all = one + random.nextDouble(200, 600);
            double from = random.nextDouble(0, one);
            double to = random.nextDouble(one, all);
            var spans = new StripSpans(List.of(0.0, one, all), from, to);
            double sag = new SimpleSpan(all, 1, List.of(new SpanLoad(from, to, 1))).deflectionAt(one);
            double perNewton = one * one * (all - one) * (all - one) / (3 * all);

            assertThat(spans.inOnePiece()[1]).isCloseTo(sag / perNewton, within(1e-9));
        }
    }

    /** An overhang over two equal spans: the moment carries on by a quarter, so 1 + 1.25 c/s. */
    @Test
    void addsAQuarterToTheLeverOfAnOverhangOverThreeStuds() {
        double[] shares = new StripSpans(List.of(0.0, 400.0, 800.0), 899, 901).inOnePiece();

        assertThat(shares[2]).isCloseTo(1 + 1.25 * 100 / 400, within(1e-9));
    }

    @Test
    void balancesForcesAndMomentsWhereverItHangs() {
        var random = new SplittableRandom(52);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var shares = any(random);
            var counted = shares.counting();
            if (counted.size() > 1) {
                balanced(counted, shares.byLever(), (shares.from() + shares.to()) / 2);
                balanced(counted, shares.inOnePiece(), (shares.from() + shares.to()) / 2);
            } else {
                assertThat(shares.byLever()).containsExactly(1.0);
            }
            assertThat(shares.most()).isGreaterThanOrEqualTo(1.0 / counted.size() - 1e-9);
            long within = shares.studs().stream()
                    .filter(stud -> stud >= shares.from() && stud <= shares.to())
                    .count();
            assertThat((long) counted.size()).isLessThanOrEqualTo(Math.max(2, within + 1));
        }
    }

    private static void balanced(List<Double> studs, List<Double> reactions, double middle) {
        double sum = 0;
        double moment = 0;
        for (int i = 0; i < studs.size(); i++) {
            sum += reactions.get(i);
            moment += reactions.get(i) * (studs.get(i) - middle) / 1000;
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        assertThat(moment).isCloseTo(0, within(1e-9));
    }

    private static StudShares any(SplittableRandom random) {
        var studs = new ArrayList<Double>();
        double place = random.nextDouble(-100, 300);
        for (int i = random.nextInt(2, 7); i > 0; i--) {
            studs.add(place);
            place += random.nextDouble(200, 610);
        }
        double from = random.nextDouble(-100, place - 100);
        return new StudShares(studs, from, from + random.nextDouble(20, 1200));
    }

    @Test
    void readsTheSameInAMirror() {
        var random = new SplittableRandom(53);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var shares = any(random);
            var mirrored = shares.studs().stream().map(stud -> -stud).sorted().toList();

            assertThat(new StudShares(mirrored, -shares.to(), -shares.from()).most())
                    .isCloseTo(shares.most(), within(1e-9));
        }
    }

    @Test
    void givesALoadAtOnePlaceToTheNearestStud() {
        assertThat(StudShares.nearest(WALL, 1650)).isEqualTo(1600);
        assertThat(StudShares.nearest(WALL, 190)).isZero();
        assertThat(StudShares.nearest(WALL, 200)).isZero();
        assertThatThrownBy(() -> StudShares.nearest(List.of(), 0))
                .hasMessage("number of studs is 0, but must be at least 1.");
    }

    @Test
    void refusesStudsThatAreNone() {
        assertThatThrownBy(() -> new StudShares(List.of(1.0), 0, 1))
                .hasMessage("number of studs is 1, but must be at least 2; lengthen the strip.");
        assertThatThrownBy(() -> new StudShares(List.of(5.0, 5.0), 0, 1))
                .hasMessage("place of a stud is 5.0 mm, but must lie beyond the one before, at 5.0 mm.");
        assertThatThrownBy(() -> new StudShares(WALL, 3, 3))
                .hasMessage("the hung width goes from 3.0 to 3.0 mm, but must end beyond where it begins.");
    }
}
