package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.BOARD_12;
import static org.standwright.design.Designs.BOARD_18;
import static org.standwright.design.Designs.BOARD_6;
import static org.standwright.design.Designs.CASTERS;
import static org.standwright.design.Designs.LEVELERS;
import static org.standwright.design.Designs.PLANER;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.slide;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.check.balance.FootLoad;
import org.standwright.check.handling.SheetLifting;
import org.standwright.check.rules.Checks;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.Support;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Size2;
import org.standwright.design.kit.Slide;
import org.standwright.design.support.Castered;
import org.standwright.part.Material;
import org.standwright.part.Nominal;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** For each rule a design that is wrong in one way, and for most of them its neighbour that is not. */
class RulesTest {
    private static final Size2 PLAN = new Size2(720, 560);

    /** Sanded plywood of 18 mm: 18 + (0.2 + 0.54) and 18 - (0.4 + 0.54), 17.06 to 18.74 mm (EN 315, as quoted). */
    @Test
    void doubtsAThicknessThatNoSheetOfItsNominalOneHas() {
        var slip = with(CASTERS, sold18(16.9), slide());

        assertThat(found(slip, "sheet-thickness")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.subject()).isEqualTo("front board");
            assertThat(finding.message()).contains("Measured 16.9 mm", "17.1 mm to 18.7 mm");
        });
        assertThat(found(with(CASTERS, sold18(17.1), slide()), "sheet-thickness"))
                .isEmpty();
        assertThat(found(with(CASTERS, sold18(18.8), slide()), "sheet-thickness"))
                .hasSize(1);
    }

    /** Opening 1000 - 2 x 18, box 26 less: 938 on slides of 500 is 1.9 times as wide as long. */
    @Test
    void tellsThatADrawerWiderThanOneAndAHalfSlidesBinds() {
        var wide = stand(PLANER, new Size2(1000, 560), CASTERS, BOARD_18, slide());

        assertThat(found(wide, "wide-drawer")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.subject()).isEqualTo("bay 1");
            assertThat(finding.message()).contains("938 mm wide on slides of 500 mm");
        });
        assertThat(found(with(CASTERS, BOARD_18, slide()), "wide-drawer")).isEmpty();
    }

    @Test
    void warnsOfCastersWithoutABrake() {
        var loose = with(withoutBrake(CASTERS.caster()), BOARD_18, slide());

        assertThat(found(loose, "rolling-stand"))
                .allMatch(finding -> finding.severity() == Severity.CAUTION)
                .extracting(Finding::subject)
                .containsExactly("caster 100", "casters");
        assertThat(found(with(CASTERS, BOARD_18, slide()), "rolling-stand"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                    assertThat(finding.message()).contains("all four casters locked");
                });
    }

    @Test
    void warnsOfFourFixedCasters() {
        var fixed = Castered.FIXED;

        assertThat(found(
                        with(new Support.Casters(fixed, Optional.empty(), Support.Bed.STRIPS), BOARD_18, slide()),
                        "rolling-stand"))
                .extracting(Finding::message)
                .anyMatch(message -> message.contains("cannot be steered"));
        assertThat(found(with(Castered.with(fixed), BOARD_18, slide()), "rolling-stand"))
                .extracting(Finding::message)
                .noneMatch(message -> message.contains("cannot be steered"));
    }

    @Test
    void wantsTheLocksAtTheOperatorsSide() {
        var front = CASTERS.caster();
        var loose = withoutBrake(front).caster();
        var wrongWayRound = new Support.Casters(loose, Optional.of(front), Support.Bed.STRIPS);
        var locksInFront = new Support.Casters(front, Optional.of(loose), Support.Bed.STRIPS);

        assertThat(found(with(wrongWayRound, BOARD_18, slide()), "rolling-stand"))
                .first()
                .satisfies(finding -> assertThat(finding.message())
                        .contains("The two casters at the operator's side do not lock", "change them over"));
        assertThat(found(with(locksInFront, BOARD_18, slide()), "rolling-stand"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                    assertThat(finding.message()).contains("wedge or lift the others");
                });
    }

    /** Total over three on each of four (several caster makers' guides); the weaker kind decides. */
    @Test
    void asksTheWeakerOfTwoKindsOfCastersToBearAThird() {
        var weak = Castered.FIXED; // rated for 60 kg
        var stand = Stands.loaded(with(Castered.with(weak), BOARD_18, slide()));

        assertThat(footLoad(weighing(stand, 180))).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.FINE);
            assertThat(finding.subject()).isEqualTo(weak.name());
            assertThat(finding.message()).contains("a third of 180 kg", "60 kg");
        });
        assertThat(footLoad(weighing(stand, 181)).severity()).isEqualTo(Severity.STOP);
    }

    @Test
    void warnsOfDrawersThatRollOpenOnAStandThatRolls() {
        var withoutDetent = withoutDetent(slide());

        assertThat(found(with(CASTERS, BOARD_18, withoutDetent), "rolling-stand"))
                .filteredOn(finding -> finding.severity() == Severity.CAUTION)
                .extracting(Finding::subject)
                .containsExactly("slide");
        assertThat(found(with(LEVELERS, BOARD_18, withoutDetent), "rolling-stand"))
                .isEmpty();
    }

    @Test
    void tellsWhetherTheHeightCanBeSet() {
        assertThat(found(with(new Support.None(3), BOARD_18, slide()), "level-range"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("Nothing in the height stack"));
        assertThat(found(with(LEVELERS, BOARD_18, slide()), "level-range"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("from 885 mm to 920 mm"));
    }

    /**
     * 2.44 m x 1.22 m x 18 mm of 680 kg/m³ weigh 36.4 kg, 12 mm 24.3 kg, 6 mm 12.1 kg; the load constant of the lifting
     * equation is 23 kg (NIOSH Pub. 94-110).
     */
    @Test
    void tellsOfSheetsThatOnePersonShouldNotLiftTheHeaviestFirst() {
        assertThat(found(with(CASTERS, BOARD_18, slide()), "sheet-lifting"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                    assertThat(finding.subject()).isEqualTo(BOARD_18.material().name());
                    assertThat(finding.message())
                            .isEqualTo("A whole sheet weighs 36.4 kg, one of "
                                    + BOARD_12.material().name()
                                    + " 24.3 kg: two people, or have it broken down where you buy it.");
                });
    }

    /** 51 lb, which is more than the 23 kg of the metric form (NIOSH Pub. 94-110). */
    @Test
    void weighsSheetsInPoundsAgainstTheConstantInPounds() {
        var inches = Stands.plain(draft -> draft.unit = Units.INCH);

        assertThat(Asked.limit(new SheetLifting(), Stands.loaded(inches))).isEqualTo("at most 51 lb");
    }

    @Test
    void tellsThatScrewsInPanelEdgesAreNotRated() {
        assertThat(found(with(CASTERS, BOARD_18, slide()), "edge-screws"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.NOTE));
    }

    /** The same stand with ballast that makes it so heavy. */
    /** All of it over the middle of its carcass. */
    private static LoadedStand weighing(LoadedStand stand, double mass) {
        var middle = stand.stand().carcass().centre();
        return new LoadedStand(
                stand.stand(), List.of(new Weight("all of it", Weight.Kind.BALLAST, "carcass", mass, middle)));
    }

    private static Finding footLoad(LoadedStand stand) {
        return Checks.of(new FootLoad(), stand).get(0);
    }

    /** What one rule finds; nothing that these designs are not about may stop them. */
    private static List<Finding> found(StandDesign design, String rule) {
        assertThat(Stands.stops(design)).isEmpty();
        return Stands.found(design, rule);
    }

    private static SheetGood sold18(double measured) {
        var board = BOARD_18.material();
        return new SheetGood(
                new Material("front board", measured, board.density(), board.grain()),
                BOARD_6.width(), // small enough to lift
                BOARD_6.width(),
                Optional.of(new Nominal(18, Nominal.Standard.METRIC_SANDED)),
                Optional.empty());
    }

    private static Support.Casters withoutBrake(Caster caster) {
        return new Support.Casters(
                new Caster(
                        caster.name(),
                        caster.height(),
                        caster.plate(),
                        caster.holes(),
                        caster.holeDiameter(),
                        caster.bolt(),
                        caster.swivelRadius(),
                        caster.wheel(),
                        caster.rating(),
                        false,
                        caster.mass()),
                Optional.empty(),
                Support.Bed.STRIPS);
    }

    private static Slide withoutDetent(Slide slide) {
        return new Slide(
                slide.name(),
                slide.sideSpace(),
                slide.bodyHeight(),
                slide.plate(),
                slide.setBack(),
                slide.rearSpace(),
                slide.rating(),
                false,
                slide.lengths());
    }

    private static StandDesign with(Support support, SheetGood front, Slide slide) {
        return stand(PLANER, PLAN, support, front, slide);
    }

    private static StandDesign stand(Machine machine, Size2 plan, Support support, SheetGood front, Slide slide) {
        var plain = Designs.stand(900, support, Mount.OVERLAY, List.of(bay(equal(3))));
        return Draft.of(plain, draft -> {
            draft.machine = machine;
            draft.plan(plan.width(), plan.depth());
            draft.front(front);
            draft.slide(slide);
            draft.steady = Steady.BY_ITSELF.anchored(Steady.Anchor.WALL); // so that it does not tip
        });
    }
}
