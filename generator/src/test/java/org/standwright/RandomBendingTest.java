package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.bending.BottomGroove;
import org.standwright.check.bending.BottomSag;
import org.standwright.check.bending.DrawerBottomSag;
import org.standwright.check.bending.PlateOpeningSag;
import org.standwright.check.bending.Racking;
import org.standwright.check.bending.ShelfSag;
import org.standwright.check.bending.SideBearing;
import org.standwright.check.bending.SideBuckling;
import org.standwright.check.bending.TopSag;
import org.standwright.check.bending.WideDrawer;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.stand.StandBuilder;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.solid.AssemblySolids;

/** What must hold for the bending of any stand that can be built, over random design files. */
class RandomBendingTest {
    private static final double ROUNDING = 1 + 1e-9;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, "full".equals(System.getProperty("standwright.random")) ? 60 : 4);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverBendsLessUnderAHeavierMachine(long seed) {
        var design = RandomStands.buildable(seed);
        var light = loaded(design).orElseThrow();
        var heavy = loaded(Draft.of(
                        design,
                        draft -> draft.machine =
                                Draft.OfMachine.of(draft.machine, machine -> machine.mass = 3 * machine.mass)))
                .orElseThrow();
        var rules = List.of(
                new TopSag(),
                new PlateOpeningSag(),
                new ShelfSag(),
                new BottomSag(),
                new DrawerBottomSag(),
                new BottomGroove(),
                new WideDrawer(),
                new Racking());
        for (var rule : rules) {
            var now = figures(rule, light);
            var then = figures(rule, heavy);

            assertThat(then.keySet()).as(rule.text().name()).isEqualTo(now.keySet());
            now.forEach((subject, figure) -> assertThat(then.get(subject) * ROUNDING)
                    .as("%s of %s, seed %d", rule.text().name(), subject, seed)
                    .isGreaterThanOrEqualTo(figure));
        }
        for (var rule : List.of(new SideBearing(), new SideBuckling())) {
            assertThat(used(rule, heavy)).as(rule.text().name()).isGreaterThanOrEqualTo(used(rule, light));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverSagsMoreWithThickerBoards(long seed) {
        var design = RandomStands.buildable(seed);

        noWorse(design, worktop(design), new TopSag(), new PlateOpeningSag());
        noWorse(design, carcass(design), new TopSag(), new ShelfSag(), new SideBuckling());
        noWorse(design, bottoms(design), new DrawerBottomSag());
    }

    /** Whatever is offered leads to a design that is built or refused for a reason, and for some stands it cures. */
    @Test
    void offersChangesThatCanBeTried() {
        int cured = 0;
        for (long seed : seeds().toArray()) {
            var design = RandomStands.buildable(seed);
            var now = loaded(design).orElseThrow();
            for (var rule : List.of(new TopSag(), new ShelfSag(), new BottomSag(), new DrawerBottomSag())) {
                for (var finding : rule.check(now)) {
                    cured += cures(rule, finding, design);
                }
            }
        }
        assertThat(cured).isPositive();
    }

    private static int cures(Rule<LoadedStand> rule, Finding finding, StandDesign design) {
        return finding.isWorthSaying()
                ? (int) finding.remedies().stream()
                        .flatMap(remedy -> remedy.change().apply(design).stream())
                        .flatMap(changed -> loaded((StandDesign) changed).stream())
                        .filter(changed -> rule.check(changed).stream().noneMatch(Finding::isWorthSaying))
                        .count()
                : 0;
    }

    @SafeVarargs
    private static void noWorse(StandDesign design, StandDesign thicker, Rule<LoadedStand>... rules) {
        loaded(thicker).ifPresent(changed -> {
            var now = loaded(design).orElseThrow();
            for (var rule : rules) {
                assertThat(used(rule, changed))
                        .as("%s of %s", rule.text().name(), design.name())
                        .isLessThanOrEqualTo(used(rule, now) * ROUNDING);
            }
        });
    }

    private static StandDesign worktop(StandDesign from) {
        return Draft.of(from, draft -> {
            var now = draft.worktop;
            draft.worktop = new Worktop(thicker(now.sheet()), now.layers(), now.overhang(), now.plate());
        });
    }

    private static StandDesign carcass(StandDesign from) {
        return Draft.of(
                from, draft -> draft.carcass = draft.carcass.of(thicker(draft.carcass.sheet()), draft.carcass.back()));
    }

    private static StandDesign bottoms(StandDesign from) {
        return Draft.of(
                from,
                draft -> draft.drawers =
                        draft.drawers.of(draft.drawers.box(), thicker(draft.drawers.bottom()), draft.drawers.front()));
    }

    private static SheetGood thicker(SheetGood sheet) {
        var now = sheet.material();
        var material = new Material(
                now.name() + " thicker",
                1.25 * now.thickness(),
                now.density(),
                now.grain(),
                now.barWidth(),
                now.colour(),
                now.elasticity());
        return new SheetGood(material, sheet.length(), sheet.width(), Optional.empty(), sheet.price());
    }

    private static Map<String, Double> figures(Rule<LoadedStand> rule, LoadedStand loaded) {
        var figures = new TreeMap<String, Double>();
        rule.check(loaded)
                .forEach(finding -> figures.put(
                        finding.subject(), finding.gauge().orElseThrow().figure()));
        return figures;
    }

    /** Share of the limit that the worst of its findings uses. */
    private static double used(Rule<LoadedStand> rule, LoadedStand loaded) {
        return rule.check(loaded).stream()
                .mapToDouble(finding -> finding.gauge().orElseThrow().used())
                .max()
                .orElse(0);
    }

    /** Nothing when it cannot be built. */
    private static Optional<LoadedStand> loaded(StandDesign design) {
        try {
            var stand = StandBuilder.build(design);
            return Optional.of(LoadedStand.of(stand, AssemblySolids.of(stand.assembly())));
        } catch (ImpossibleDesignException refused) {
            return Optional.empty();
        }
    }
}
