package org.standwright.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.Stands;
import org.standwright.check.rules.Checks;
import org.standwright.design.Designs;
import org.standwright.design.Plan;
import org.standwright.design.Redesign;
import org.standwright.design.RuleChoice;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.solid.AssemblySolids;
import org.standwright.unit.Units;

/** What is asked is a rule of this test's own: worktops of 36 mm and more are thick enough, those of 60 mm too heavy. */
class CuresTest {
    private static final Remedy SECOND_LAYER = remedy("a second layer", top -> layers(top, 2));
    private static final Remedy THIN_SECOND_LAYER =
            remedy("two layers of 12 mm", top -> layers(sheet(top, Designs.BOARD_12), 2));
    private static final Remedy TWO_OF_30 =
            remedy("two layers of 30 mm", top -> layers(sheet(top, Designs.BOARD_18.of(thick(30))), 2));
    private static final Remedy IMPOSSIBLE = Remedy.ofStand(
            "a stand too small for any drawer",
            design -> Optional.of(Redesign.of(design)
                    .plan(new Plan(OptionalDouble.of(50), OptionalDouble.of(50)))
                    .done()));
    private static final Remedy NOT_HERE = Remedy.ofStand("something else", design -> Optional.empty());

    @Test
    void theFirstProposalThatAnswersAFindingIsItsCure() {
        assertThat(cures(IMPOSSIBLE, NOT_HERE, THIN_SECOND_LAYER, SECOND_LAYER, TWO_OF_30))
                .singleElement()
                .satisfies(cure -> {
                    assertThat(cure.words()).isEqualTo("a second layer");
                    assertThat(cure.after().map(Gauge::figure)).hasValue(36.0);
                    assertThat(((StandDesign) cure.design()).worktop().layers()).isEqualTo(2);
                });
    }

    @Test
    void whatMakesSomethingElseStopIsNoCure() {
        assertThat(cures(TWO_OF_30)).isEmpty();
    }

    @Test
    void whatDoesNotHelpIsNoCure() {
        assertThat(cures(THIN_SECOND_LAYER)).isEmpty();
        assertThat(cures()).isEmpty();
    }

    /** Alone neither is 36 mm thick: boards of 20 mm, or a second layer of 12 mm. */
    @Test
    void twoProposalsAreTriedTogetherAgainstAStop() {
        var thin = Stands.plain(draft -> draft.worktop = layers(sheet(draft.worktop, Designs.BOARD_12), 1));
        var thicker = remedy("boards of 20 mm", top -> sheet(top, Designs.BOARD_18.of(thick(20))));

        assertThat(cures(thin, SECOND_LAYER, thicker)).singleElement().satisfies(cure -> {
            assertThat(cure.words()).isEqualTo("a second layer, and boards of 20 mm");
            assertThat(cure.sentence(Units.MM)).isEqualTo("Cure: a second layer, and boards of 20 mm, then 40 mm.");
        });
    }

    /** 24 mm are still a caution, but 12 mm are a stop. */
    @Test
    void whatLeavesACautionIsBetterThanAStop() {
        var thin = Stands.plain(draft -> draft.worktop = layers(sheet(draft.worktop, Designs.BOARD_12), 1));

        assertThat(cures(thin, SECOND_LAYER))
                .singleElement()
                .satisfies(cure -> assertThat(cure.sentence(Units.MM))
                        .isEqualTo("Better: a second layer, then 24 mm. It is thin."));
    }

    @Test
    void whatIsAcceptedNeedsNoCure() {
        var accepted = Stands.plain(draft -> {
            draft.worktop = layers(draft.worktop, 1);
            draft.rules = List.of(
                    new RuleChoice("thick-top", Optional.empty(), 1, Optional.of("Nothing heavy ever stands on it.")));
        });

        assertThat(cures(accepted, SECOND_LAYER)).isEmpty();
    }

    /** The subject that was named is gone with its sheet; then nothing that the rule finds may be left. */
    @Test
    void aSubjectThatIsGoneIsCuredWhenTheRuleIsContent() {
        var swap = remedy("board 36", top -> sheet(top, Designs.BOARD_18.of(thick(36))));

        assertThat(cures(swap))
                .singleElement()
                .satisfies(cure -> assertThat(cure.after()).isPresent());
    }

    @Test
    void oneChangedStandIsBuiltOnceAndNotTooMany() {
        var counted = new ArrayList<LoadedStand>();
        var remedies = new ArrayList<Remedy>();
        for (int i = 0; i < 2 * Cures.MOST_BUILDS; i++) {
            double overhang = 1 + i / 2; // each twice
            remedies.add(remedy(
                    "overhang " + overhang,
                    top -> new Worktop(top.sheet(), 1, new Worktop.Overhang(20, overhang, 0, 0), top.plate())));
        }
        remedies.addAll(remedies);
        var loaded = Stands.loaded(Stands.plain(draft -> draft.worktop = layers(draft.worktop, 1)));
        cured(loaded, new ThickTop(remedies, counted));

        assertThat(counted.stream().map(System::identityHashCode).distinct()).hasSize(1 + Cures.MOST_BUILDS);
    }

    private static List<Finding> cured(LoadedStand loaded, ThickTop thick) {
        List<Rule<LoadedStand>> rules = List.of(thick, new HeavyTop());
        var findings =
                rules.stream().flatMap(rule -> Checks.of(rule, loaded).stream()).toList();
        var solids = AssemblySolids.of(loaded.stand().assembly());
        return Cures.of(Judging.ofStand(solids, rules), loaded.design(), findings);
    }

    private static List<Cure> cures(Remedy... remedies) {
        return cures(Stands.plain(draft -> draft.worktop = layers(draft.worktop, 1)), remedies);
    }

    private static List<Cure> cures(StandDesign design, Remedy... remedies) {
        return cured(Stands.loaded(design), new ThickTop(List.of(remedies), new ArrayList<>())).stream()
                .flatMap(finding -> finding.cure().stream())
                .toList();
    }

    private static Remedy remedy(String words, UnaryOperator<Worktop> change) {
        return Remedy.ofStand(
                words,
                design -> Optional.of(Redesign.of(design)
                        .worktop(change.apply(design.worktop()))
                        .done()));
    }

    private static Worktop layers(Worktop top, int layers) {
        return new Worktop(top.sheet(), layers, top.overhang(), top.plate());
    }

    private static Worktop sheet(Worktop top, SheetGood sheet) {
        return new Worktop(sheet, top.layers(), top.overhang(), top.plate());
    }

    private static Material thick(double mm) {
        return Designs.BOARD_18.material().thick(mm);
    }

    private static double thickness(LoadedStand stand) {
        var top = stand.design().worktop();
        return top.layers() * top.sheet().material().thickness();
    }

    private record ThickTop(List<Remedy> remedies, List<LoadedStand> asked) implements Rule<LoadedStand> {
        private static final RuleText TEXT =
                RuleText.plain("thick-top", "Is the worktop thick enough?", "this test's own");

        @Override
        public RuleText text() {
            return TEXT;
        }

        @Override
        public List<Finding> check(LoadedStand stand) {
            asked.add(stand);
            var gauge = new Gauge(Quantity.LENGTH, thickness(stand), Limit.atLeast(36, 15));
            var subject =
                    "worktop of " + stand.design().worktop().sheet().material().thickness();
            return List.of(Finding.judged(TEXT, subject, gauge, "It is thin.").remedies(remedies));
        }
    }

    private record HeavyTop() implements Rule<LoadedStand> {
        private static final RuleText TEXT = RuleText.plain("heavy-top", "Is it too heavy?", "this test's own");

        @Override
        public RuleText text() {
            return TEXT;
        }

        @Override
        public List<Finding> check(LoadedStand stand) {
            return thickness(stand) < 60 ? List.of() : List.of(Finding.stop(TEXT, "worktop", "It is heavy."));
        }
    }
}
