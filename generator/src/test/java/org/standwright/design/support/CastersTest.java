package org.standwright.design.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.support.Castered.FIXED;
import static org.standwright.design.support.Castered.SWIVEL;
import static org.standwright.design.support.Castered.high;
import static org.standwright.design.support.Castered.mixed;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.assembly.Block;
import org.standwright.cutlist.CutList;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.Size2;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.unit.Units;

class CastersTest {
    @ParameterizedTest
    @EnumSource(Side.class)
    void putsTheLockingTwoAtTheOperatorsSideWithRoomForAll(Side operator) {
        var stand = built(mixed(Support.Bed.STRIPS), operator);

        Clearances.check(stand.assembly());
        assertThat(stand.assembly().blocks())
                .filteredOn(block -> block.kind() == Block.Kind.CASTER)
                .hasSize(4)
                .allSatisfy(block -> {
                    double middleX = stand.carcass().centre().x();
                    double middleY = stand.carcass().centre().y();
                    boolean near = switch (operator) {
                        case FRONT -> block.box().centre().y() < middleY;
                        case BACK -> block.box().centre().y() > middleY;
                        case LEFT -> block.box().centre().x() < middleX;
                        case RIGHT -> block.box().centre().x() > middleX;
                    };
                    var plate = near ? SWIVEL.plate() : FIXED.plate();
                    assertThat(block.box().size().x()).isCloseTo(plate.width(), within(1e-9));
                    assertThat(block.box().size().y()).isCloseTo(plate.depth(), within(1e-9));
                });
    }

    @Test
    void turnsTheOperatorWithTheMachine() {
        var design = Draft.of(
                design(mixed(Support.Bed.STRIPS), Side.FRONT),
                draft -> draft.place = new Place(180, draft.place.margins(), draft.place.shims()));
        var front = StandBuilder.build(design).assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.CASTER)
                .filter(block -> block.box().centre().y() < 280)
                .toList();

        assertThat(front)
                .hasSize(2)
                .allSatisfy(block -> assertThat(block.box().size().y())
                        .isCloseTo(FIXED.plate().depth(), within(1e-9)));
    }

    /**
     * Under a head's recess 36 - 9 and 36 - 10.4 mm of wood; below it 10 mm of plate, washer and thread end and the nut.
     */
    @Test
    void buysEachKindWithItsOwnBolts() {
        var lines = built(mixed(Support.Bed.STRIPS), Side.FRONT).assembly().hardware().stream()
                .filter(line -> line.use().startsWith("casters"))
                .map(line -> line.count() + " " + line.item())
                .toList();

        assertThat(lines)
                .containsExactly(
                        "2 caster 100, with brake",
                        "8 hexagon bolt M8 x 45",
                        "8 washer M8, 25 mm wide",
                        "8 washer M8",
                        "8 lock nut M8",
                        "2 fixed 100",
                        "8 hexagon bolt M10 x 50",
                        "8 washer M10, 30 mm wide",
                        "8 washer M10",
                        "8 lock nut M10");
    }

    @Test
    void countsFourOfOneKindOnOneLine() {
        var lines = built(Designs.CASTERS, Side.FRONT).assembly().hardware().stream()
                .filter(line -> line.use().startsWith("casters"))
                .map(line -> line.count() + " " + line.item())
                .toList();

        assertThat(lines)
                .containsExactly(
                        "4 caster 100, with brake",
                        "16 hexagon bolt M8 x 45",
                        "16 washer M8, 25 mm wide",
                        "16 washer M8",
                        "16 lock nut M8");
    }

    /** A wheel that swings 85 mm clears a fixed caster's plate, 60 mm from its middle; two of them swing 170 mm. */
    @Test
    void leavesEveryWheelRoomToSwing() {
        var fixed =
                SupportPlan.of(design(mixed(Support.Bed.STRIPS), Side.FRONT)).leastPlan();
        var swivels = SupportPlan.of(design(Designs.CASTERS, Side.FRONT)).leastPlan();
        double swivelFromEnd = 10 + 85 / 2.0;
        double fixedFromEnd = 10 + 120 / 2.0;

        assertThat(swivels.depth()).isCloseTo(2 * swivelFromEnd + 2 * 85, within(1e-9));
        // recesses of 26 and 31 mm around bolts 30 and 45 mm from the middle, 80 mm of screws between them
        assertThat(fixed.depth()).isCloseTo(swivelFromEnd + fixedFromEnd + (30 + 13) + 80 + (45 + 15.5), within(1e-9));
        // the front two swing, and the strips are as wide as the fixed ones need
        assertThat(fixed.width()).isCloseTo(2 * 85 + 130, within(1e-9));
    }

    @Test
    void buildsUnderTheSmallestPlanAndNotUnderASmallerOne() {
        var support = mixed(Support.Bed.STRIPS);
        var design = Draft.of(design(support, Side.FRONT), draft -> draft.bays = List.of(bay(equal(3))));
        var least = SupportPlan.of(design).leastPlan();

        Clearances.check(StandBuilder.build(Draft.of(design, draft -> draft.plan(least.width(), least.depth())))
                .assembly());
        assertThatThrownBy(() ->
                        StandBuilder.build(Draft.of(design, draft -> draft.plan(least.width() - 1, least.depth()))))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("A plan 299 mm wide is too small");
    }

    @Test
    void refusesTwoThatAreNotAsHighAndNamesTheHeightThatIs() {
        var low = Castered.with(high(FIXED, 120));

        assertThatThrownBy(() -> built(low, Side.FRONT))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refused -> assertThat(refused.field()).isEqualTo("/support/others"))
                .hasMessageContaining("fixed 100 is 120 mm high, caster 100 125 mm")
                .hasMessageContaining("Use two that are 125 mm high.");
        built(Castered.with(high(FIXED, 125)), Side.FRONT);
    }

    @Test
    void refusesAPlateThatItsHolesReachOverAtItsOwnField() {
        var wrong = new Caster("wrong", 125, new Size2(60, 60), new Size2(60, 40), 9, 8, 0, 100, 60, false, 0.7);

        assertThatThrownBy(() -> built(Castered.with(wrong), Side.FRONT))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refused -> assertThat(refused.field()).isEqualTo("/support/others"))
                .hasMessageContaining("The bolt holes of wrong reach over its plate");
        assertThatThrownBy(() -> built(new Support.Casters(wrong, Optional.empty(), Support.Bed.STRIPS), Side.FRONT))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refused -> assertThat(refused.field()).isEqualTo("/support/caster"));
    }

    @Test
    void cutsStripsInPairsWhereTheirCastersAreAlike() {
        assertThat(strips(Side.FRONT)).containsExactly("caster block lower 2", "caster block upper 2");
        assertThat(strips(Side.LEFT))
                .containsExactly(
                        "caster block lower 1", "caster block lower 1", "caster block upper 1", "caster block upper 1");
    }

    private static List<String> strips(Side operator) {
        return CutList.of(built(mixed(Support.Bed.STRIPS), operator).assembly(), Units.MM).lines().stream()
                .filter(line -> line.part().name().startsWith("caster block"))
                .map(line -> line.part().name() + " " + line.count())
                .toList();
    }

    private static Stand built(Support support, Side operator) {
        return StandBuilder.build(design(support, operator));
    }

    private static StandDesign design(Support support, Side operator) {
        var stand = Designs.stand(900, support, Mount.OVERLAY, List.of(bay(400, equal(3)), bay(equal(3))));
        return Draft.of(
                stand,
                draft -> draft.machine = Draft.OfMachine.of(draft.machine, machine -> machine.operator = operator));
    }
}
