package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.Stands;
import org.standwright.check.Weight;
import org.standwright.check.balance.TipLargest;
import org.standwright.check.balance.TipLean;
import org.standwright.check.balance.TipOpen;
import org.standwright.check.balance.TipPush;
import org.standwright.check.balance.TipSlope;
import org.standwright.design.Redesign;
import org.standwright.design.Steady;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;

/** Stability of random stands against statics worked out in another way, and what can only get better or worse. */
class RandomBalanceTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final double SAME = 1e-6;
    private static final List<Rule<LoadedStand>> TIPPING =
            List.of(new TipOpen(), new TipLargest(), new TipLean(), new TipPush(), new TipSlope());

    private static final Map<Long, LoadedStand> BUILT = new ConcurrentHashMap<>();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, FULL ? 500 : 50);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void tipsAsStaticsInSpaceSays(long seed) {
        var loaded = random(seed);
        var other = new OtherStatics(loaded);
        var loads = loaded.design().loads();
        double height = loaded.stand().stack().workingHeight();

        if (!other.allOpenings().isEmpty()) {
            same(new TipOpen(), loaded, other.ratio(other.allOpenings(), 0, hinge -> List.of()));
        }
        if (!other.drawers().isEmpty()) {
            same(
                    new TipLargest(),
                    loaded,
                    other.drawers().stream()
                            .mapToDouble(drawer -> other.ratio(Set.of(drawer), 0, hinge -> List.of()))
                            .min()
                            .orElseThrow());
        }
        same(
                new TipSlope(),
                loaded,
                other.ratio(Set.of(), loaded.design().site().slope(), hinge -> List.of()));
        same(
                new TipPush(),
                loaded,
                other.ratio(
                        Set.of(),
                        0,
                        hinge -> List.of(new OtherStatics.Pull(
                                new Vec3(0, 0, height), hinge.out().times(loads.push()), false))));
        same(new TipLean(), loaded, other.ratio(Set.of(), 0, hinge -> leaning(loaded, loads.lean())));
    }

    /** With a lock the worst drawer of each column is open; all columns are tried out here. */
    @ParameterizedTest
    @MethodSource("seeds")
    void tipsWithALockAsTheWorstDrawersOfAllBaysTogether(long seed) {
        var locked = locked(random(seed));
        var other = new OtherStatics(locked);
        if (!other.allOpenings().isEmpty() && other.combinations().size() <= 400) {
            same(
                    new TipOpen(),
                    locked,
                    other.combinations().stream()
                            .mapToDouble(open -> other.ratio(open, 0, hinge -> List.of()))
                            .min()
                            .orElseThrow());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void heavierContentsNeverSteadyIt(long seed) {
        var loaded = random(seed);
        var heavier = new LoadedStand(
                loaded.stand(),
                loaded.weights().stream()
                        .map(RandomBalanceTest::twiceIfContents)
                        .toList());

        for (var rule : TIPPING) {
            ratio(rule, loaded)
                    .forEach(before -> assertThat(
                                    ratio(rule, heavier).findFirst().orElseThrow())
                            .as(rule.text().name())
                            .isLessThanOrEqualTo(before + SAME));
        }
    }

    /** Under the middle of its bottom, that is above the middle of its feet or nearly so. */
    @ParameterizedTest
    @MethodSource("seeds")
    void ballastNeverHurts(long seed) {
        var before = random(seed);
        var after = with(40, before);

        for (var rule : List.of(new TipOpen(), new TipLargest(), new TipLean(), new TipPush())) {
            ratio(rule, before)
                    .forEach(ratio -> assertThat(ratio(rule, after).findFirst().orElseThrow())
                            .as(rule.text().name())
                            .isGreaterThanOrEqualTo(ratio - SAME));
        }
    }

    /** Every cure that says how much ballast it takes. */
    @ParameterizedTest
    @MethodSource("seeds")
    void asMuchBallastAsACureNamesIsEnough(long seed) {
        var loaded = random(seed);
        for (var rule : TIPPING) {
            var findings = rule.check(loaded);
            for (int i = 0; i < findings.size(); i++) {
                double limit = findings.get(i).gauge().orElseThrow().limit().first();
                for (var remedy : findings.get(i).remedies()) {
                    if (remedy.words().contains("ballast")) {
                        var cured = with(ballast(remedy, loaded), loaded);
                        assertThat(figure(rule.check(cured).get(i)))
                                .as("%s: %s", rule.text().name(), remedy.words())
                                .isGreaterThanOrEqualTo(limit - SAME);
                    }
                }
            }
        }
    }

    private static double ballast(Remedy remedy, LoadedStand loaded) {
        return Stands.changed(loaded.design(), remedy).steady().ballast();
    }

    private static double figure(Finding finding) {
        return finding.gauge().orElseThrow().figure();
    }

    private static Weight twiceIfContents(Weight weight) {
        return weight.kind() == Weight.Kind.CONTENTS
                ? new Weight(weight.what(), weight.kind(), weight.group(), 2 * weight.mass(), weight.centre())
                : weight;
    }

    private static List<OtherStatics.Pull> leaning(LoadedStand loaded, double newtons) {
        var top = loaded.stand().worktop();
        var pulls = new ArrayList<OtherStatics.Pull>();
        for (double x : new double[] {top.min().x() + 50, top.max().x() - 50}) {
            for (double y : new double[] {top.min().y() + 50, top.max().y() - 50}) {
                pulls.add(new OtherStatics.Pull(new Vec3(x, y, top.max().z()), new Vec3(0, 0, -newtons), false));
            }
        }
        return pulls;
    }

    private static void same(Rule<LoadedStand> rule, LoadedStand loaded, double expected) {
        var finding = rule.check(loaded).get(0);
        var gauge = finding.gauge().orElseThrow();

        assertThat(gauge.figure()).as(rule.text().name()).isCloseTo(expected, within(SAME * Math.max(1, expected)));
        assertThat(finding.severity()).isEqualTo(gauge.limit().of(expected));
    }

    private static Stream<Double> ratio(Rule<LoadedStand> rule, LoadedStand loaded) {
        return rule.check(loaded).stream().limit(1).map(RandomBalanceTest::figure);
    }

    private static LoadedStand locked(LoadedStand loaded) {
        var stand = loaded.stand();
        var design = stand.design();
        var locked = new Stand(
                Redesign.of(design).steady(design.steady().interlocked()).done(),
                stand.stack(),
                stand.carcass(),
                stand.bays(),
                stand.machine(),
                stand.assembly());
        return new LoadedStand(locked, loaded.weights());
    }

    private static LoadedStand with(double ballast, LoadedStand loaded) {
        var carcass = loaded.stand().carcass();
        var middle = new Vec3(
                carcass.centre().x(), carcass.centre().y(), carcass.min().z());
        var weights = new ArrayList<>(loaded.weights());
        weights.add(new Weight("ballast", Weight.Kind.BALLAST, "carcass", ballast, middle));
        return new LoadedStand(loaded.stand(), weights);
    }

    /** Built once for all tests. */
    private static LoadedStand random(long seed) {
        return BUILT.computeIfAbsent(
                seed,
                some -> loaded(StandBuilder.build(Redesign.of(RandomStands.buildable(some))
                        .steady(Steady.BY_ITSELF)
                        .done())));
    }

    private static LoadedStand loaded(Stand stand) {
        return LoadedStand.of(stand, AssemblySolids.of(stand.assembly()));
    }
}
