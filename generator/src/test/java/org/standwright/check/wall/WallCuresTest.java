package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.advice.Cures;
import org.standwright.advice.Judging;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Spot;

/** What is proposed against a finding cures it, built and judged anew. */
class WallCuresTest {
    private static final List<Rule<HungWall>> RULES = List.of(
            new CleatWithdrawal(),
            new CleatLateral(),
            new CleatCombined(),
            new CleatPullThrough(),
            new CleatCables(),
            new HangRideOut(),
            new HangKnock(),
            new HangLip(),
            new HangSupport());

    private static Finding cured(Hung wall, Rule<HungWall> rule) {
        var hung = wall.hung();
        var findings = RULES.stream().flatMap(each -> each.check(hung).stream()).toList();
        var judging = new Judging<>(
                RULES,
                design -> design instanceof WallDesign walls ? Optional.of(Hung.hung(walls)) : Optional.empty(),
                HungWall::design);
        return Cures.of(judging, hung.design(), findings).stream()
                .filter(finding -> finding.rule().equals(rule.text().name()))
                .filter(finding -> finding.cure().isPresent())
                .findFirst()
                .orElseThrow(() -> new AssertionError(findings.stream()
                        .map(finding -> finding.severity() + " " + finding.rule() + ": " + finding.message())
                        .toList()));
    }

    private static String words(Hung wall, Rule<HungWall> rule) {
        return cured(wall, rule).cure().map(Cure::words).orElseThrow();
    }

    @Test
    void aSecondScrewHoldsWhatOneDoesNot() {
        var heavy = new Hung();
        heavy.holders = List.of(Hung.panel("unit", 55));

        assertThat(words(heavy, new CleatCombined())).startsWith("two screws at each stud");
        assertThat(cured(heavy, new CleatCombined()).message()).endsWith("in all.");
    }

    @Test
    void longerScrewsReachTheStud() {
        var brief = new Hung();
        brief.length = OptionalDouble.of(57.15);

        assertThat(words(brief, new CleatWithdrawal())).isEqualTo("screws 63.5 mm long");
    }

    @Test
    void shorterScrewsStayAwayFromCables() {
        assertThat(words(new Hung(), new CleatCables())).isEqualTo("screws 63.5 mm long");
    }

    @Test
    void aLargerWasherIsNotDrawnThrough() {
        var round = new Hung();
        round.washer = OptionalDouble.of(9);
        round.holders = List.of(Hung.panel("unit", 24));

        assertThat(words(round, new CleatPullThrough())).isEqualTo("washer heads of 13.5 mm");
    }

    @Test
    void aLockKeepsAHolderFromBeingKnockedOff() {
        var knocked = new Hung();
        knocked.holders = List.of(Hung.panel("unit", 6));

        assertThat(words(knocked, new HangKnock())).isEqualTo("'unit' screwed to its strip through its back");
    }

    @Test
    void thePlannerFindsAPlaceBeforeAStud() {
        var between = new Hung();
        between.holders = List.of(Hung.panel("unit", 2, 200, false, Optional.of(new Spot("north", 1, 500))));

        assertThat(words(between, new HangSupport())).isEqualTo("'unit' where the planner hangs it");
    }
}
