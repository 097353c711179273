package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class HangingTest {
    /** Own derivation, own example (references 3.8): 1.2708, T 63.54 lbf = 282.6 N. */
    @Test
    void pullsAsTheWorkedExampleSays() {
        var hanging = Cleats.worked();

        assertThat(hanging.ratio()).isCloseTo(1.2708, within(1e-4));
        assertThat(hanging.pull() / Cleats.POUND).isCloseTo(63.54, within(0.01));
        assertThat(hanging.pull()).isCloseTo(282.6, within(0.1));
        assertThat(hanging.wedge() / Cleats.POUND).isCloseTo(50, within(1e-9));
        assertThat(hanging.carried() / Cleats.POUND).isCloseTo(50, within(1e-9));
        assertThat(hanging.ridesOut()).isFalse();
    }

    /** d > 0.54 (e - t/2) at 45° and μ 0.3 (references 3.8). */
    @Test
    void needsALittleMoreThanHalfItsReachBelow() {
        var hanging = Cleats.worked();

        assertThat(hanging.leastDrop() / (7.625 * Cleats.INCH)).isCloseTo(0.54, within(0.002));
        assertThat(new Hanging(1, 150, hanging.leastDrop() * 2, hanging.bevel()).ridesOut())
                .isFalse();
        assertThat(new Hanging(1, 8 * Cleats.INCH, 100, hanging.bevel()).ridesOut())
                .isTrue();
    }

    @Test
    void pullsNoLessThanItsWedgeHoweverNearTheWall() {
        var near = new Hanging(100, 9, 300, CleatBevel.usual(18));

        assertThat(near.lowerPress()).isZero();
        assertThat(near.pull()).isCloseTo(100, within(1e-9));
        assertThat(near.leastDrop()).isZero();
    }

    /**
     * Unknown are the bevel's force, square to it, the hanger's back on the wall beside it and the lower back on the
     * wall: three equations, about the foot of the wall.
     */
    @Test
    void balancesOnABevelWithoutFriction() {
        var random = new SplittableRandom(12);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var hanging = Cleats.any(random);
            double tilt = Math.toRadians(hanging.bevel().tilt());
            double up = random.nextDouble(500, 1500);
            double[] sizes = FreeBody.balance(
                    new FreeBody.Line(
                            -Math.sin(tilt), Math.cos(tilt), hanging.bevel().middle(), up),
                    new FreeBody.Line(1, 0, 0, up),
                    new FreeBody.Line(1, 0, 0, up - hanging.drop()),
                    new FreeBody.Line(0, -hanging.weight(), hanging.centre(), up - 77));

            assertThat(sizes[0] * Math.cos(tilt)).isCloseTo(hanging.carried(), within(1e-7));
            assertThat(sizes[0] * Math.sin(tilt)).isCloseTo(hanging.wedge(), within(1e-7));
            assertThat(sizes[1]).isCloseTo(hanging.wedge() - hanging.lowerPress(), within(1e-7));
            assertThat(sizes[2]).isCloseTo(hanging.lowerPress(), within(1e-7));
        }
    }

    /** What the records give, summed up: the bevel holds V up and T in, the upper back presses what is left. */
    @Test
    void leavesNoForceAndNoMomentOver() {
        var random = new SplittableRandom(13);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var hanging = Cleats.any(random);
            double upperPress = hanging.pull() - hanging.lowerPress();
            double size = hanging.weight() + hanging.pull();

            assertThat(upperPress).isNotNegative();
            assertThat((hanging.carried() - hanging.weight()) / size).isCloseTo(0, within(1e-9));
            assertThat((upperPress + hanging.lowerPress() - hanging.pull()) / size)
                    .isCloseTo(0, within(1e-9));
            double atCentre = hanging.carried() * (hanging.bevel().middle() - hanging.centre());
            double atFoot = hanging.lowerPress() * hanging.drop();
            assertThat((atCentre + atFoot) / (size * hanging.drop())).isCloseTo(0, within(1e-9));
        }
    }

    /**
     * Whether forces exist at all: of the two edges of the bevel's friction cone, the upper back and the lower back, any
     * three that balance the weight without one of them pulling.
     */
    @Test
    void ridesOutJustWhenNoForceWithinTheFrictionConeHoldsIt() {
        var random = new SplittableRandom(14);
        int out = 0;
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var hanging = Cleats.any(random);
            assertThat(hanging.ridesOut()).as(hanging.toString()).isEqualTo(!canRest(hanging));
            double least = hanging.leastDrop();
            var bevel = hanging.bevel();
            if (least > 1) {
                assertThat(canRest(new Hanging(9, hanging.centre(), least * 1.0001, bevel)))
                        .isTrue();
                assertThat(canRest(new Hanging(9, hanging.centre(), least * 0.9999, bevel)))
                        .isFalse();
            }
            out += hanging.ridesOut() ? 1 : 0;
        }
        assertThat(out).isBetween(50, Cleats.SEEDS - 50);
    }

    private static boolean canRest(Hanging hanging) {
        double tilt = Math.toRadians(hanging.bevel().tilt());
        double lean = Math.atan(hanging.bevel().friction());
        var load = new FreeBody.Line(0, -hanging.weight(), hanging.centre(), 0);
        var steep = edge(tilt + lean, hanging);
        var flat = edge(tilt - lean, hanging);
        var upper = new FreeBody.Line(1, 0, 0, 0);
        var lower = new FreeBody.Line(1, 0, 0, -hanging.drop());
        return pushes(steep, flat, lower, load)
                || pushes(steep, upper, lower, load)
                || pushes(flat, upper, lower, load)
                || pushes(steep, flat, upper, load);
    }

    private static FreeBody.Line edge(double angle, Hanging hanging) {
        return new FreeBody.Line(
                -Math.sin(angle), Math.cos(angle), hanging.bevel().middle(), 0);
    }

    private static boolean pushes(FreeBody.Line one, FreeBody.Line two, FreeBody.Line three, FreeBody.Line load) {
        for (double size : FreeBody.balance(one, two, three, load)) {
            if (!(size >= -1e-9)) {
                return false;
            }
        }
        return true;
    }

    @Test
    void neverRidesOutSoonerWithMoreBelow() {
        var random = new SplittableRandom(15);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var here = Cleats.any(random);
            var longer =
                    new Hanging(here.weight(), here.centre(), here.drop() + random.nextDouble(0, 200), here.bevel());
            var farther =
                    new Hanging(here.weight(), here.centre() + random.nextDouble(0, 200), here.drop(), here.bevel());
            var heavier = here.weighing(here.weight() * random.nextDouble(1, 3));

            assertThat(longer.ratio()).isLessThanOrEqualTo(here.ratio());
            assertThat(longer.ridesOut() && !here.ridesOut()).isFalse();
            assertThat(longer.pull()).isLessThanOrEqualTo(here.pull());
            assertThat(farther.ratio()).isGreaterThanOrEqualTo(here.ratio());
            assertThat(farther.pull()).isGreaterThanOrEqualTo(here.pull());
            assertThat(heavier.pull()).isGreaterThanOrEqualTo(here.pull());
            assertThat(heavier.ridesOut()).isEqualTo(here.ridesOut());
        }
    }

    @Test
    void tipsOverWithJustMoreOnItsFrontLipThanFits() {
        var random = new SplittableRandom(16);
        int limited = 0;
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var hanging = Cleats.any(random);
            double lip = hanging.centre() + random.nextDouble(0, 300);
            var most = hanging.mostAdded(lip);
            if (hanging.ridesOut()) {
                assertThat(most).hasValue(0);
            } else if (most.isEmpty()) {
                assertThat(hanging.with(1e6, lip).ridesOut()).isFalse();
            } else if (most.getAsDouble() > 1) {
                limited++;
                assertThat(hanging.with(most.getAsDouble() * 0.999, lip).ridesOut())
                        .isFalse();
                assertThat(hanging.with(most.getAsDouble() * 1.001, lip).ridesOut())
                        .isTrue();
            }
        }
        assertThat(limited).isGreaterThan(50);
    }

    /** 100 N at 109 mm, t 18, d 100: held 185.7 mm before the bevel. At 309 mm: 100 · (185.7 - 100) / (300 - 185.7) = 75 N. */
    @Test
    void saysHowMuchMoreFits() {
        var hanging = new Hanging(100, 109, 100, CleatBevel.usual(18));

        assertThat(hanging.mostAdded(309).orElseThrow()).isCloseTo(75, within(0.1));
        assertThat(hanging.mostAdded(150)).isEmpty();
        assertThat(hanging.with(100, 309))
                .usingRecursiveComparison()
                .isEqualTo(new Hanging(200, 209, 100, hanging.bevel()));
    }

    @Test
    void refusesWhatCannotHang() {
        var bevel = CleatBevel.usual(18);

        assertThatThrownBy(() -> new Hanging(0, 100, 100, bevel))
                .hasMessage("weight of what hangs is 0.0 N, but must be more than 0.");
        assertThatThrownBy(() -> new Hanging(9, 8, 100, bevel))
                .hasMessage(
                        "centre of mass of what hangs is 8.0 mm in front of the wall, but must be at least half the "
                                + "strip's thickness, 9.0 mm: it hangs before the strip.");
        assertThatThrownBy(() -> new Hanging(9, 100, 0, bevel))
                .hasMessage("drop from the bevel to where the lower back touches is 0.0 mm, but must be more than 0.");
        assertThatThrownBy(() -> new Hanging(9, Double.NaN, 100, bevel)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> Cleats.worked().with(-1, 100)).hasMessageContaining("load added is -1.0 N");
        assertThatThrownBy(() -> Cleats.worked().mostAdded(1)).hasMessageContaining("load added is 1.0 mm in front");
    }
}
