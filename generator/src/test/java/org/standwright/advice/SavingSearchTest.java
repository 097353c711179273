package org.standwright.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.advice.TightTops.SHORT_BY_4;
import static org.standwright.advice.TightTops.SINGLE;
import static org.standwright.advice.TightTops.advice;
import static org.standwright.advice.TightTops.cutList;
import static org.standwright.advice.TightTops.depth;
import static org.standwright.advice.TightTops.give;
import static org.standwright.advice.TightTops.plan;
import static org.standwright.advice.TightTops.priceAll;
import static org.standwright.advice.TightTops.priced;
import static org.standwright.advice.TightTops.savings;
import static org.standwright.design.Designs.BOARD_12;
import static org.standwright.design.Designs.BOARD_18;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.check.Stands;
import org.standwright.design.Designs;
import org.standwright.design.DrawerPlan;
import org.standwright.design.Loads;
import org.standwright.design.Savings.OtherSheet;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.sheet.SheetPlanVerifier;
import org.standwright.sheet.Stock;
import org.standwright.unit.Money;

class SavingSearchTest {
    @Test
    void findsExactlyTheSmallestStepThatSavesASheet() {
        var design = TightTops.of(SHORT_BY_4, depth(10));
        var advice = advice(design);

        assertThat(words(design, advice)).containsExactly("4 mm less deep: the plan 556 mm deep");
        assertThat(advice.savings().get(0).after().sheets())
                .isEqualTo(advice.before().sheets() - 1);
        assertThat(advice.savings().get(0).size()).isEqualTo(0.4);
    }

    @Test
    void saysSoWhereNothingHelps() {
        var advice = advice(TightTops.of(SINGLE, depth(10)));

        assertThat(advice.savings()).isEmpty();
        assertThat(advice.tried()).isEqualTo(2);
    }

    @Test
    void triesNothingUnlessTheDesignSaysWhatMayChange() {
        var design = Designs.planerStand();

        assertThat(SavingSearch.of(StandBuilder.build(design), cutList(design), plan(design)))
                .isEmpty();
    }

    /** The drawers take 450 and more, so most of what is allowed cannot be built. */
    @Test
    void leavesOutWhatCannotBeBuilt() {
        var design = TightTops.of(SHORT_BY_4, depth(500));
        var advice = advice(design);

        assertThat(words(design, advice)).startsWith("4 mm less deep: the plan 556 mm deep");
        assertThat(advice.tried()).isGreaterThan(100);
    }

    /** One layer of 545 x 580 and one of 551 x 586 lie side by side on 1120, but the machine's base is 560 wide. */
    @Test
    void leavesOutWhatANewFindingStops() {
        var narrow = Designs.sheet("top", 18, 1120, 610);
        var design = TightTops.of(narrow, savings(give(0), give(175), 0, List.of()));
        var saving = new SizeChange(SizeChange.Dimension.WIDTH, -175, 175).in(design);

        assertThat(Cost.of(plan(saving)).isLessThan(Cost.of(plan(design)))).isTrue();
        assertThat(Stands.all(saving))
                .anySatisfy(finding -> assertThat(finding.rule()).isEqualTo("machine-on-worktop"));
        assertThat(advice(design).savings()).isEmpty();
    }

    /** 2 small ones at 40 EUR against 1 large one at 60. */
    @Test
    void findsAnotherSheetThatCostsLess() {
        var large = priced(Designs.sheet("large top", 18, 1500, 1220), "60.00 EUR");
        var swap = List.of(new OtherSheet(SINGLE, large));
        var design = TightTops.of(
                SINGLE,
                savings(give(0), give(0), 0, swap),
                draft -> priceAll(draft, "40.00 EUR", priced(SINGLE, "40.00 EUR")));
        var advice = advice(design);

        assertThat(words(design, advice)).containsExactly("large top (1500 x 1220 mm) instead of top");
        assertThat(paid(advice.before()) - paid(advice.savings().get(0).after()))
                .isEqualTo(20);
    }

    /** Each bottom fills a sheet of its own; drawers hold little, so that fewer and larger ones are not too heavy. */
    @Test
    void findsADrawerThatCouldGo() {
        var bottoms = Designs.sheet("thin", 6, 560, 760);
        var design = TightTops.of(SINGLE, savings(give(0), give(0), 2, List.of()), draft -> {
            var now = draft.drawers;
            draft.loads = new Loads(50, 195, 750, 150);
            draft.drawers = new DrawerPlan(
                    now.box(),
                    bottoms,
                    now.front(),
                    now.hang(),
                    now.mount(),
                    now.gap(),
                    now.bumper(),
                    now.grip(),
                    now.rounding());
        });
        var advice = advice(design);

        assertThat(words(design, advice)).containsExactly("1 drawer fewer in bay 1", "2 drawers fewer in bay 1");
        assertThat(advice.savings().get(0).also()).contains("2 drawers instead of 3");
        assertThat(advice.savings().get(1).also()).contains("1 drawer instead of 3");
        assertThat(advice.savings())
                .extracting(saving -> advice.before().sheets() - saving.after().sheets())
                .containsExactly(1, 2);
    }

    /** A sheet for both layers at 60 EUR is cheaper than two at 40, but only where they are 4 less deep. */
    @Test
    void triesTwoChangesTogetherWhereNoneDoesItAlone() {
        var other = priced(Designs.sheet("tight top", 18, 745, 1171.5), "60.00 EUR");
        var swap = List.of(new OtherSheet(SINGLE, other));
        var design = TightTops.of(
                SINGLE,
                savings(give(10), give(0), 0, swap),
                draft -> priceAll(draft, "40.00 EUR", priced(SINGLE, "40.00 EUR")));

        assertThat(words(design, advice(design)))
                .containsExactly(
                        "tight top (745 x 1171.5 mm) instead of top, and 4 mm less deep: the plan 556 mm deep");
    }

    @Test
    void putsTheSmallestChangeThatSavesASheetFirst() {
        var large = Designs.sheet("large top", 18, 1500, 650);
        var swap = List.of(new OtherSheet(SHORT_BY_4, large));
        var design = TightTops.of(SHORT_BY_4, savings(give(10), give(0), 0, swap));

        assertThat(words(design, advice(design)))
                .containsExactly("large top (1500 x 650 mm) instead of top", "4 mm less deep: the plan 556 mm deep");
    }

    @Test
    void namesBoardsThatNothingIsCutFrom() {
        var elsewhere = Designs.sheet("board 99", 18, 2440, 1220);
        var swap = List.of(new OtherSheet(elsewhere, BOARD_18));

        assertThat(advice(TightTops.of(SINGLE, savings(give(0), give(0), 0, swap)))
                        .unused())
                .containsExactly("board 99");
    }

    @Test
    void givesTheSameAdviceAgain() {
        var design =
                TightTops.of(SHORT_BY_4, savings(give(10), give(10), 1, List.of(new OtherSheet(BOARD_12, BOARD_18))));

        assertThat(advice(design)).isEqualTo(advice(design));
    }

    @Test
    void everySavingIsThatOfAPlanWithoutFault() {
        var design = TightTops.of(SHORT_BY_4, depth(10));
        var advice = advice(design);
        var changed = advice.savings().get(0).design();
        var plan = plan(changed);

        assertThat(SheetPlanVerifier.faults(Stock.of(changed), cutList(changed), plan))
                .isEmpty();
        assertThat(Cost.of(plan)).isEqualTo(advice.savings().get(0).after());
        assertThat(Cost.of(plan(design))).isEqualTo(advice.before());
    }

    private static double paid(Cost cost) {
        return cost.money().map(Money::amount).orElseThrow().doubleValue();
    }

    private static List<String> words(StandDesign design, Advice advice) {
        return advice.savings().stream().map(saving -> saving.words(design)).toList();
    }
}
