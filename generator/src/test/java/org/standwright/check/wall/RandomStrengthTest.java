package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.check.Severity;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Fixing;

/** What must hold for the strength of any walls with anything on them. */
class RandomStrengthTest {
    private static final double SAME = 1 + 1e-9;

    private static final List<Rule<HungWall>> STRIPS =
            List.of(new CleatWithdrawal(), new CleatLateral(), new CleatCombined(), new CleatPullThrough());

    private static final List<Rule<HungWall>> LIMITED = List.of(
            new CleatWithdrawal(),
            new CleatLateral(),
            new CleatCombined(),
            new CleatPullThrough(),
            new CleatOverhang(),
            new HangRideOut(),
            new HangLip(),
            new HangerScrews(),
            new HolderShelfSag());

    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));

    static LongStream seeds() {
        return LongStream.range(0, FULL ? 200 : 15);
    }

    static LongStream hung() {
        return seeds().filter(seed -> RandomHung.design(seed).isPresent());
    }

    @Test
    void mostSeedsHangSomethingOnRatedStrips() {
        assertThat(hung()).hasSizeGreaterThan(FULL ? 80 : 6);
        assertThat(hung().filter(seed -> !used(RandomHung.design(seed).orElseThrow(), STRIPS)
                                .isEmpty())
                        .count())
                .isGreaterThan(FULL ? 80 : 6);
        assertThat(limited()).hasSizeGreaterThan(FULL ? 40 : 2);
    }

    @ParameterizedTest
    @MethodSource("hung")
    void heavierThingsNeverUseLess(long seed) {
        var design = RandomHung.design(seed).orElseThrow();
        var heavier = RandomHung.weighing(
                design,
                holder -> holder.name().endsWith("1")
                        ? 2 * holder.things().wholeMass()
                        : holder.things().wholeMass());

        assertNoLess(used(heavier, STRIPS), used(design, STRIPS), seed);
    }

    @ParameterizedTest
    @MethodSource("hung")
    void longerScrewsNeverUseMore(long seed) {
        var design = RandomHung.design(seed).orElseThrow();
        double now = Hung.hung(design).wall().screwing().length();

        var longer = design.with(fixing(design, now + 15, design.fixing().perStud()));

        assertNoLess(used(design, STRIPS), used(longer, STRIPS), seed);
    }

    @ParameterizedTest
    @MethodSource("hung")
    void aSecondScrewNeverUsesMore(long seed) {
        var design = RandomHung.design(seed).orElseThrow();
        double now = Hung.hung(design).wall().screwing().length();
        try {
            var one = used(design.with(fixing(design, now, 1)), STRIPS);
            var two = used(design.with(fixing(design, now, 2)), STRIPS);

            assertNoLess(one, two, seed);
        } catch (ImpossibleDesignException refused) {
            // two heads find no room on this strip
            assertThat(refused).hasMessageContaining("head");
        }
    }

    /** Those whose holders all have a limit: on wood studs, and not too heavy when empty. */
    static LongStream limited() {
        return hung().filter(seed -> {
            var design = RandomHung.design(seed).orElseThrow();
            var limits = LoadLimits.of(Hung.hung(design)).holders();
            return limits.size() == design.holders().size()
                    && limits.values().stream().allMatch(limit -> limit.mass() > 0);
        });
    }

    /** Filled to their limits all at once nothing stops them, and with a little more something does. */
    @ParameterizedTest
    @MethodSource("limited")
    void whatIsFilledToItsLimitsStillHangs(long seed) {
        var design = RandomHung.design(seed).orElseThrow();
        var limits = LoadLimits.of(Hung.hung(design)).holders();

        var full = RandomHung.weighing(
                design, holder -> 0.9999 * limits.get(holder.name()).mass());
        assertThat(stops(full)).as("seed %d", seed).isEmpty();

        var over = RandomHung.weighing(
                design, holder -> 1.0001 * limits.get(holder.name()).mass());
        assertThat(stops(over)).as("seed %d", seed).isNotEmpty();
    }

    private static List<String> stops(WallDesign design) {
        var wall = Hung.hung(design);
        return LIMITED.stream()
                .flatMap(rule -> rule.check(wall).stream())
                .filter(finding -> finding.severity() == Severity.STOP)
                .map(finding -> finding.rule() + " " + finding.subject() + ": " + finding.message())
                .toList();
    }

    private static Fixing fixing(WallDesign design, double length, int perStud) {
        return new Fixing(
                design.fixing().screw(),
                OptionalDouble.of(length),
                perStud,
                design.fixing().washer());
    }

    private static void assertNoLess(Map<String, Double> more, Map<String, Double> less, long seed) {
        less.forEach((what, used) -> Optional.ofNullable(more.get(what))
                .ifPresent(
                        other -> assertThat(used).as("seed %d, %s", seed, what).isLessThanOrEqualTo(other * SAME)));
    }

    /** How much of its limit each finding uses, by rule and subject. */
    private static Map<String, Double> used(WallDesign design, List<Rule<HungWall>> rules) {
        var used = new TreeMap<String, Double>();
        var wall = Hung.hung(design);
        for (var rule : rules) {
            for (Finding finding : rule.check(wall)) {
                finding.gauge()
                        .ifPresent(gauge -> used.put(
                                finding.rule() + " " + finding.subject(),
                                gauge.figure() / gauge.limit().stop().orElseGet(gauge.limit()::first)));
            }
        }
        return used;
    }
}
