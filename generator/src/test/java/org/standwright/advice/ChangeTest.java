package org.standwright.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;
import static org.standwright.design.Designs.planerStand;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.advice.SizeChange.Dimension;
import org.standwright.design.Content;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.frame.PlanSize;
import org.standwright.part.Grain;

class ChangeTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    static Stream<StandDesign> stands() {
        return Presets.stands();
    }

    @ParameterizedTest
    @MethodSource("stands")
    void makesEveryPlanSmallerByWhatItSays(StandDesign design) {
        var shallow = new SizeChange(Dimension.DEPTH, -4, 10).in(design);
        var narrow = new SizeChange(Dimension.WIDTH, -4, 10).in(design);

        assertThat(PlanSize.of(shallow).depth()).isCloseTo(PlanSize.of(design).depth() - 4, within(1e-9));
        assertThat(PlanSize.of(narrow).width()).isCloseTo(PlanSize.of(design).width() - 4, within(1e-9));
        assertThat(PlanSize.of(shallow).width()).isEqualTo(PlanSize.of(design).width());
    }

    @Test
    void changesTheMarginsThatAPlanFollowsFrom() {
        var around = margins(Layout.AS_WRITTEN);
        var depth = new SizeChange(Dimension.DEPTH, -4, 10);
        var width = new SizeChange(Dimension.WIDTH, 6, 10);

        assertThat(depth.in(around).place().margins().back()).hasValue(96);
        assertThat(depth.in(around).plan()).isEqualTo(around.plan());
        assertThat(depth.words(around)).isEqualTo("4 mm less deep: the back margin 96 mm");
        assertThat(width.in(around).place().margins().right()).hasValue(86);
        assertThat(width.words(around)).isEqualTo("6 mm wider: the right margin 86 mm");
        assertThat(width.in(margins(Layout.MIRRORED)).place().margins().left()).hasValue(76);
    }

    private static StandDesign margins(Layout layout) {
        return Draft.of(planerStand(), draft -> {
            draft.layout = layout;
            draft.plan = new Plan(NONE, NONE);
            draft.place = new Place(
                    0,
                    new Place.Margins(
                            OptionalDouble.of(120),
                            OptionalDouble.of(100),
                            OptionalDouble.of(70),
                            OptionalDouble.of(80)),
                    draft.place.shims());
        });
    }

    @Test
    void writesTheWorkingHeightOut() {
        var lower = new SizeChange(Dimension.WORKING_HEIGHT, -5, 10);

        assertThat(lower.in(planerStand()).workingHeight()).isEqualTo(new WorkingHeight.Given(895));
        assertThat(lower.words(planerStand())).isEqualTo("5 mm lower: the working height 895 mm");
    }

    /** 90 and its gap of 3 go to the lowest. */
    @Test
    void givesTheHeightOfAFrontThatGoesToTheLowest() {
        var design = Draft.of(planerStand(), draft -> draft.bays = List.of(bay(given(90.0, 100.0, 120.0))));

        assertThat(new FewerDrawers(List.of(0, 0), 1).in(design).bays()).containsExactly(bay(given(100.0, 213.0)));
    }

    @Test
    void takesDrawersOutOfABayWithinABay() {
        var divided = new Content.Divided(NONE, List.of(bay(fill(80)), bay(equal(4))));
        var design = Draft.of(planerStand(), draft -> draft.bays = List.of(bay(equal(1)), bay(given(90), divided)));
        var change = new FewerDrawers(List.of(1, 1, 1, 0), 2);

        assertThat(FewerDrawers.places(design, 2)).containsExactly(change.place());
        assertThat(change.in(design).bays().get(1).contents().get(1))
                .isEqualTo(new Content.Divided(NONE, List.of(bay(fill(80)), bay(equal(2)))));
        assertThat(change.words(design)).isEqualTo("2 drawers fewer in bay 2b");
    }

    @Test
    void freesTheGrainOfOneBoardWhereverItIsUsed() {
        var freed = new FreedGrain("board 6").in(planerStand());

        assertThat(freed.carcass().back().material().grain()).isEqualTo(Grain.NONE);
        assertThat(freed.drawers().bottom()).isEqualTo(freed.carcass().back());
        assertThat(freed.carcass().sheet()).isEqualTo(planerStand().carcass().sheet());
    }

    @Test
    void splitsTheBack() {
        assertThat(new SplitBack().in(planerStand()).carcass().backPieces()).isEqualTo(2);
    }
}
