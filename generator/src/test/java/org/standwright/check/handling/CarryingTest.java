package org.standwright.check.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Joint;
import org.standwright.design.Site;
import org.standwright.design.WorkingHeight;
import org.standwright.design.kit.Connector;
import org.standwright.unit.Units;

/**
 * The stand is 720 wide, 580 deep with its worktop's overhang and 790 high, with its machine 1270; without worktop and
 * drawers 720 x 560 x 754.
 */
class CarryingTest {
    private static final Connector CONNECTOR = new Connector("connector 50", 50, 5, 7, 7, 10);

    @Test
    void passesADoorwayAsItIs() {
        assertThat(doorway(720, 1300, draft -> {})).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.FINE);
            assertThat(finding.gauge().map(Gauge::figure))
                    .hasValueSatisfying(share -> assertThat(share).isCloseTo(1270.0 / 1300, within(1e-9)));
            assertThat(finding.message()).isEqualTo("It passes the doorway of 720 x 1300 mm as it is.");
        });
    }

    @Test
    void takesTheMachineOffUnderALowLintel() {
        assertThat(words(doorway(600, 800, draft -> {})))
                .containsExactly(
                        "It passes the doorway of 600 x 800 mm with its machine taken off.",
                        "It passes the doorway of 600 x 800 mm only with its machine taken off.");
    }

    /** Laid down it needs 580 x 720; to be set upright again the diagonal of 790 and 580, 980 (Pythagoras). */
    @Test
    void laysItDownUnderALintelLowerThanItself() {
        assertThat(words(doorway(600, 730, draft -> {})).get(1))
                .isEqualTo(
                        "It passes the doorway of 600 x 730 mm only with its machine taken off and laid down; to be set"
                                + " upright again it needs 980.1 mm of height.");
    }

    @Test
    void takesTheWorktopOffInANarrowDoorway() {
        assertThat(words(doorway(565, 2000, draft -> {})).get(1))
                .endsWith("only without machine, worktop and drawers.");
    }

    @Test
    void warnsWhereAGluedCarcassDoesNotPass() {
        assertThat(doorway(500, 2000, draft -> {})).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.gauge().map(Gauge::figure))
                    .hasValueSatisfying(share -> assertThat(share).isCloseTo(560.0 / 500, within(1e-9)));
            assertThat(finding.message())
                    .contains("does not pass the doorway of 500 x 2000 mm in any way", "560 mm by");
        });
    }

    @Test
    void takesApartWhatConnectingScrewsHold() {
        assertThat(words(doorway(500, 2000, CarryingTest::connected)).get(1)).endsWith("only taken apart.");
    }

    @Test
    void saysNothingWhereNoDoorwayIsKnown() {
        assertThat(Stands.found(Stands.plain(draft -> {}), "doorway")).isEmpty();
        assertThat(Stands.found(Stands.plain(draft -> {}), "stairs")).isEmpty();
    }

    @Test
    void asksOnStairsForWidthAndForWhatTwoPersonsCarry() {
        var plain = found(new Stairs(), draft -> draft.site = stairs(800, 2000));
        var apart = found(new Stairs(), draft -> {
            draft.site = stairs(800, 2000);
            connected(draft);
        });

        assertThat(plain).extracting(Finding::subject).containsExactly("the stairs", "weight on the stairs");
        assertThat(words(plain).get(0)).isEqualTo("It passes the stairs of 800 x 2000 mm with its machine taken off.");
        assertThat(plain.get(1).severity()).isEqualTo(Severity.CAUTION);
        assertThat(apart.get(1).severity()).isEqualTo(Severity.FINE);
    }

    /** 23 x 25/30 x (1 - 0.003 x 45) x (0.82 + 4.5/45) = 15.25 kg for each (NIOSH Pub. 94-110, metric). */
    @Test
    void halvesTheEmptyStandBetweenTwoPersons() {
        var loaded = Stands.loaded(Stands.plain(draft -> {}));
        double mass = new EmptyStand(loaded).withoutDrawers();
        double limit = 23 * 25.0 / 30 * (1 - 0.003 * 45) * (0.82 + 4.5 / 45);

        assertThat(StandLifting.BY_HAND.limit(Units.MM)).isCloseTo(limit, within(1e-9));
        assertThat(new StandLifting().check(loaded)).singleElement().satisfies(finding -> {
            assertThat(finding.gauge().map(Gauge::figure))
                    .hasValueSatisfying(index -> assertThat(index).isCloseTo(mass / 2 / limit, within(1e-9)));
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.message())
                    .endsWith("One person should lift 15.3 kg from the floor: it takes 3 persons, drawers out, or skids"
                            + " or a dolly under it.");
        });
        assertThat(found(new StandLifting(), draft -> draft.support = Designs.CASTERS))
                .isEmpty();
    }

    /** H 40, V 75, D 25: 14.375 kg (NIOSH Pub. 94-110, worked). */
    @Test
    void judgesTheHeaviestPartAtTheBench() {
        assertThat(found(new PartLifting(), draft -> {})).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.FINE);
            assertThat(finding.message()).contains("at a bench one person should lift 14.4 kg");
        });
    }

    /** V at most 175 cm: above that nobody should lift anything (NIOSH Pub. 94-110). */
    @Test
    void sendsAMachineAboveReachToAHoist() {
        var high = Stands.plain(draft -> draft.workingHeight = new WorkingHeight.Given(1900));

        assertThat(new MachineLifting().check(Stands.loaded(high)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.message()).contains("above the reach of the lifting equation");
                });
    }

    private static void connected(Draft draft) {
        var plan = draft.carcass;
        draft.carcass =
                new CarcassPlan(plan.sheet(), plan.back(), plan.housing(), plan.fit(), new Joint.Connected(CONNECTOR));
    }

    private static Site stairs(double width, double height) {
        return new Site(2, 10, 0, Optional.empty(), Optional.of(new Site.Passage(width, height)));
    }

    private static List<Finding> doorway(double width, double height, Consumer<Draft> change) {
        return found(new Doorway(), draft -> {
            draft.site = new Site(2, 10, 0, Optional.of(new Site.Passage(width, height)), Optional.empty());
            change.accept(draft);
        });
    }

    private static List<Finding> found(Rule<LoadedStand> rule, Consumer<Draft> change) {
        return rule.check(Stands.loaded(Stands.plain(change)));
    }

    private static List<String> words(List<Finding> findings) {
        return findings.stream().map(Finding::message).toList();
    }
}
