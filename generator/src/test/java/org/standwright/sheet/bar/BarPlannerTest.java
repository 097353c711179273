package org.standwright.sheet.bar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.Proof;
import org.standwright.sheet.Proof.Goal;
import org.standwright.sheet.plan.Seeds;

class BarPlannerTest {
    private static final int MM = 3200;

    static LongStream seeds() {
        return Seeds.fewOrMany(40, 1500);
    }

    private static List<BarPiece> pieces(int... lengthsAndCounts) {
        var pieces = new ArrayList<BarPiece>();
        for (int i = 0; i < lengthsAndCounts.length; i += 2) {
            pieces.add(new BarPiece("P" + (i / 2 + 1), lengthsAndCounts[i], lengthsAndCounts[i + 1]));
        }
        return pieces;
    }

    /** Three cuts of 4 between four pieces of 97 make 400 just so; nothing is left to cut off. */
    @Test
    void needsNoCutAfterTheLastPieceOfAFullBar() {
        var plan = BarPlanner.plan(pieces(97, 4), List.of(BarKind.endless(400)), 4);

        assertThat(plan.bars()).hasSize(1);
        assertThat(plan.bars().get(0).offcut()).isZero();
        assertThat(BarPlanner.plan(pieces(97, 4), List.of(BarKind.endless(399)), 4)
                        .bars())
                .hasSize(2);
    }

    /** By hand: longest first wastes a bar on 6 + 3; 6 + 4 twice and 4 + 3 + 3 fill three bars of 10. */
    @Test
    void doesBetterThanTheLongestFirst() {
        var plan = BarPlanner.plan(pieces(5, 2, 4, 2, 3, 4), List.of(BarKind.endless(10)), 0);

        assertThat(plan.bars()).hasSize(3);
        assertThat(plan.proof().isMinimal()).isTrue();
    }

    /** V. Chvátal, Linear Programming (1983), chapter 13: 453 raws of 100 in. From memory, not checked in the book. */
    @Test
    void cutsTheTextbooksRollsFromAsFewAsTheBookSays() {
        var plan = BarPlanner.plan(pieces(45, 97, 36, 610, 31, 395, 14, 211), List.of(BarKind.endless(100)), 0);

        assertThat(plan.proof().reached()).isEqualTo(453);
        assertThat(plan.proof().least()).isEqualTo(453);
    }

    /**
     * A paper machine's order that is often quoted for this problem: 219 rolls of 13 widths from rolls of 5600 mm, 73 at
     * least. From memory, not checked in a source; in the planner's own units here.
     */
    @Test
    void cutsAPaperMachinesOrderFromAsFewRollsAsIsKnown() {
        int[] order = {
            1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20, 2000, 10, 2050, 12, 2100, 14, 2140,
            16, 2150, 18, 2200, 20
        };
        for (int i = 0; i < order.length; i += 2) {
            order[i] *= MM;
        }
        var plan = BarPlanner.plan(pieces(order), List.of(BarKind.endless(5600 * MM)), 0);

        assertThat(plan.proof().reached()).isEqualTo(73);
        assertThat(plan.proof().least()).isEqualTo(73);
    }

    @Test
    void usesBarsAtHandAndThenTheCheaperLength() {
        var atHand = new BarKind(1200, 1, 0);
        var dear = new BarKind(3000, BarKind.UNLIMITED, 9000);
        var cheap = new BarKind(2000, BarKind.UNLIMITED, 5000);

        // 6 of 600: two from the bar at hand, then three from 2000 (5000), one from another; or four from 3000 (9000)
        var plan = BarPlanner.plan(pieces(600, 6), List.of(atHand, dear, cheap), 0);

        assertThat(plan.proof().goal()).isEqualTo(Goal.MONEY);
        assertThat(plan.proof().reached()).isEqualTo(9000);
        assertThat(plan.proof().isMinimal()).isTrue();
        assertThat(plan.bars()).extracting(CutBar::bar).contains(atHand, dear);
    }

    @Test
    void refusesWhatCannotBeCut() {
        var bars = List.of(BarKind.endless(1000 * MM));
        assertThatThrownBy(() -> BarPlanner.plan(pieces(1200 * MM, 1), bars, 0))
                .hasMessage("'P1' is 1200.00 mm long, but the longest bar only 1000.00 mm; buy longer bars.");
        assertThatThrownBy(() -> BarPlanner.plan(pieces(1, 1), List.of(), 0)).hasMessageContaining("no bars");
        assertThatThrownBy(() -> BarPlanner.plan(pieces(1, 1), bars, -1)).hasMessageContaining("kerf is -1");
        assertThatThrownBy(() -> BarPlanner.plan(pieces(1, 100_000), bars, 0)).hasMessageContaining("10000 at most");
        assertThatThrownBy(() -> BarPlanner.plan(pieces(1, Integer.MAX_VALUE, 2, Integer.MAX_VALUE), bars, 0))
                .hasMessageContaining("4294967294 pieces");
        assertThatThrownBy(() -> BarPlanner.plan(pieces(1, 1), List.of(BarKind.endless(Integer.MAX_VALUE)), 3))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> BarPlanner.plan(pieces(600, 3), List.of(new BarKind(1000, 2, 1)), 0))
                .hasMessageContaining("too few");
        assertThat(BarPlanner.plan(List.of(), List.of(), 0).bars()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void costsWhatTheBestOfAllPlansCosts(long seed) {
        var random = new SplittableRandom(seed);
        int kerf = random.nextInt(3);
        var bars = new ArrayList<BarKind>();
        bars.add(new BarKind(random.nextInt(10, 40), BarKind.UNLIMITED, random.nextInt(1, 5)));
        if (random.nextBoolean()) {
            bars.add(new BarKind(random.nextInt(5, 40), random.nextInt(1, 3), random.nextInt(3)));
        }
        var pieces = new ArrayList<BarPiece>();
        int left = random.nextInt(1, 8);
        while (left > 0) {
            int count = random.nextInt(1, left + 1);
            pieces.add(new BarPiece(
                    "P" + pieces.size(), random.nextInt(1, bars.get(0).length() + 1), count));
            left -= count;
        }

        var plan = BarPlanner.plan(pieces, bars, kerf);

        long best = AllBarPlans.cheapest(pieces, bars, kerf);
        boolean counts = plan.proof().goal() == Goal.SHEETS;
        long unit = bars.stream()
                .mapToLong(BarKind::cost)
                .filter(cost -> cost > 0)
                .min()
                .orElse(1);
        assertThat(plan.proof().reached() * (counts ? unit : 1)).isEqualTo(best);
        assertThat(plan.proof().least()).isLessThanOrEqualTo(plan.proof().reached());
        assertThat(BarPlanVerifier.faults(pieces, bars, plan)).isEmpty();
    }

    @Test
    void theVerifierSeesWhatIsWrong() {
        var pieces = pieces(40, 3);
        var bars = List.of(new BarKind(100, 1, 1));
        var bar = new CutBar(bars.get(0), List.of("P1", "P1", "P1", "X"), 5);
        var proof = new Proof(Goal.SHEETS, 2, 1);

        assertThat(BarPlanVerifier.faults(pieces, bars, new BarPlan(List.of(bar, bar), 2, proof)))
                .contains(
                        "bar 1 has 'X', which nobody asked for.",
                        "bar 1 is too short for 'P1'.",
                        "of 'P1' 3 are too many.",
                        "1 bars of 100 units are used that are not there.");
    }
}
