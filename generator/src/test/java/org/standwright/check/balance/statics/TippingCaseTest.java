package org.standwright.check.balance.statics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/** What must hold for any bodies on any feet. */
class TippingCaseTest {
    private static final double RATIO = 1.5;
    private static final double STEP = 5;
    private static final Vec3 MIDDLE = new Vec3(300, 200, 100);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theBallastItNamesIsEnoughAndAStepLessIsNot(long seed) {
        var random = new SplittableRandom(seed);
        var bodies = bodies(random);
        var tipping = pushed(feet(0, random.nextDouble(0, 40)), bodies, random.nextDouble(0, 200));
        double ballast = tipping.ballast(RATIO, MIDDLE, STEP).orElseThrow();

        assertThat(with(ballast, tipping).worst().ratio()).isGreaterThanOrEqualTo(RATIO - 1e-9);
        if (ballast > 0) {
            assertThat(with(ballast - STEP, tipping).worst().ratio()).isLessThan(RATIO);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aWiderBaseNeverTipsSooner(long seed) {
        var random = new SplittableRandom(seed);
        var bodies = bodies(random);
        double push = random.nextDouble(0, 200);
        double trail = random.nextDouble(0, 40);
        double before = pushed(feet(0, trail), bodies, push).worst().ratio();

        assertThat(pushed(feet(random.nextDouble(0, 100), trail), bodies, push)
                        .worst()
                        .ratio())
                .isGreaterThanOrEqualTo(before - 1e-12);
        assertThat(pushed(feet(0, random.nextDouble(0, trail + 1e-9)), bodies, push)
                        .worst()
                        .ratio())
                .isGreaterThanOrEqualTo(before - 1e-12);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ballastNeverHurts(long seed) {
        var random = new SplittableRandom(seed);
        var tipping = pushed(feet(0, 30), bodies(random), random.nextDouble(0, 200));

        assertThat(with(random.nextDouble(0, 100), tipping).worst().ratio())
                .isGreaterThanOrEqualTo(tipping.worst().ratio() - 1e-12);
    }

    /** Ballast beyond an edge only makes it worse. */
    @ParameterizedTest
    @MethodSource("seeds")
    void namesNoBallastWhereNoneHelps(long seed) {
        var random = new SplittableRandom(seed);
        var tipping = pushed(feet(0, 30), bodies(random), 2000);

        assertThat(tipping.ballast(RATIO, new Vec3(-50, 200, 100), STEP)).isEmpty();
    }

    private static TippingCase with(double ballast, TippingCase tipping) {
        var more = new Bodies(List.of(new Body(ballast, MIDDLE)), List.of());
        var choices = Stream.concat(tipping.choices().stream(), Stream.of(List.of(more)))
                .toList();
        return new TippingCase(tipping.polygon(), choices, tipping.weight(), tipping.forces());
    }

    private static TippingCase pushed(List<Contact> feet, Bodies bodies, double newtons) {
        return TippingCase.standing(SupportPolygon.of(feet), List.of(List.of(bodies)))
                .with(edge -> List.of(edge.push(newtons, 900)));
    }

    private static List<Contact> feet(double wider, double trail) {
        return Stream.of(
                        new Vec2(-wider, -wider),
                        new Vec2(600 + wider, -wider),
                        new Vec2(600 + wider, 400 + wider),
                        new Vec2(-wider, 400 + wider))
                .map(centre -> new Contact(centre, trail))
                .toList();
    }

    private static Bodies bodies(SplittableRandom random) {
        return new Bodies(
                Stream.generate(() -> body(random, 100, 300)).limit(5).toList(),
                Stream.generate(() -> body(random, -300, 300)).limit(5).toList());
    }

    private static Body body(SplittableRandom random, double nearest, double farthest) {
        return new Body(
                random.nextDouble(0, 20),
                new Vec3(
                        random.nextDouble(100, 500), random.nextDouble(nearest, farthest), random.nextDouble(0, 1000)));
    }
}
