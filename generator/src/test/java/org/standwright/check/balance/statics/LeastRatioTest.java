package org.standwright.check.balance.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The worst filling, against every filling there is. */
class LeastRatioTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 300);
    }

    @Test
    void contentsThatHoldAreLeftOut() {
        var loading = new Loading(new Moments(300, 100), List.of(new Moments(500, 0), new Moments(0, 50)));

        assertThat(LeastRatio.of(List.of(List.of(loading)))).isEqualTo(new Moments(300, 150));
    }

    @Test
    void whatDoesNotTipAtAllHasTheLargestRatio() {
        assertThat(new Moments(1, 0).ratio()).isEqualTo(99);
        assertThat(Moments.NONE.ratio()).isEqualTo(99);
        assertThat(new Moments(1e6, 1).ratio()).isEqualTo(99);
        assertThat(new Moments(0, 1).ratio()).isZero();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isTheLeastOfAllFillingsAndChoices(long seed) {
        var random = new SplittableRandom(seed);
        var choices = choices(random);

        assertThat(LeastRatio.of(choices).ratio())
                .isEqualTo(all(choices).mapToDouble(Moments::ratio).min().orElseThrow(), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void missesNothingExactlyWhereItsRatioIsReached(long seed) {
        var random = new SplittableRandom(seed);
        var choices = choices(random);
        double ratio = random.nextDouble(0.2, 3);

        assertThat(LeastRatio.missing(ratio, choices) > 0)
                .isEqualTo(LeastRatio.of(choices).ratio() < ratio);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void heavierContentsNeverHold(long seed) {
        var random = new SplittableRandom(seed);
        var choices = choices(random);
        double heavier = random.nextDouble(1, 5);
        var filled = choices.stream()
                .map(choice -> choice.stream()
                        .map(loading -> new Loading(
                                loading.sure(),
                                loading.contents().stream()
                                        .map(content -> content.times(heavier))
                                        .toList()))
                        .toList())
                .toList();

        assertThat(LeastRatio.of(filled).ratio())
                .isLessThanOrEqualTo(LeastRatio.of(choices).ratio() + 1e-12);
    }

    private static List<List<Loading>> choices(SplittableRandom random) {
        var choices = new ArrayList<List<Loading>>();
        choices.add(List.of(loading(random, 5)));
        for (int i = random.nextInt(3); i > 0; i--) {
            choices.add(Stream.generate(() -> loading(random, 2))
                    .limit(1 + random.nextInt(3))
                    .toList());
        }
        return choices;
    }

    private static Loading loading(SplittableRandom random, int most) {
        return new Loading(
                moments(random),
                Stream.generate(() -> moments(random))
                        .limit(random.nextInt(most + 1))
                        .toList());
    }

    private static Moments moments(SplittableRandom random) {
        return new Moments(
                random.nextInt(4) == 0 ? 0 : random.nextDouble(0, 100),
                random.nextInt(4) == 0 ? 0 : random.nextDouble(0, 100));
    }

    private static Stream<Moments> all(List<List<Loading>> choices) {
        return choices.stream()
                .map(choice -> choice.stream().flatMap(LeastRatioTest::fillings).toList())
                .reduce(List.of(Moments.NONE), LeastRatioTest::sums)
                .stream();
    }

    private static List<Moments> sums(List<Moments> some, List<Moments> others) {
        return some.stream().flatMap(one -> others.stream().map(one::plus)).toList();
    }

    private static Stream<Moments> fillings(Loading loading) {
        var fillings = List.of(loading.sure());
        for (var content : loading.contents()) {
            fillings = sums(fillings, List.of(Moments.NONE, content));
        }
        return fillings.stream();
    }
}
