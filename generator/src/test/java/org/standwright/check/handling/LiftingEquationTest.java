package org.standwright.check.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.Designs;
import org.standwright.unit.Units;

class LiftingEquationTest {
    /** References 12, row 58: formula of NIOSH Pub. 94-110 [C], worked through [D]. */
    @ParameterizedTest
    @CsvSource({"40, 75, 25, 14.375", "30, 30, 50, 15.087"})
    void givesTheWorkedLimitsInKilograms(double reach, double height, double travel, double limit) {
        assertThat(LiftingEquation.METRIC.limit(reach, height, travel, 0)).isCloseTo(limit, within(1e-3));
        assertThat(LiftingEquation.METRIC.limitInKilograms(10 * reach, 10 * height, 10 * travel))
                .isCloseTo(limit, within(1e-3));
    }

    /** References 12, row 59: the US form gives 33.454 lb, 15.174 kg; the metric one 14.851 kg for the same posture. */
    @Test
    void givesTheWorkedLimitInPounds() {
        assertThat(LiftingEquation.US.limit(12, 12, 20, 0)).isCloseTo(33.454, within(1e-3));
        assertThat(LiftingEquation.US.limitInKilograms(12 * 25.4, 12 * 25.4, 20 * 25.4))
                .isCloseTo(15.174, within(1e-3));
        assertThat(LiftingEquation.METRIC.limitInKilograms(12 * 25.4, 12 * 25.4, 20 * 25.4))
                .isCloseTo(14.851, within(1e-3));
    }

    /** References 12, row 60: the publication's table of the asymmetry multiplier [S]. */
    @ParameterizedTest
    @CsvSource({"0, 1.00", "30, .90", "45, .86", "90, .71", "135, .57"})
    void agreesWithTheTableOfTurns(double degrees, double multiplier) {
        assertThat(LiftingEquation.asymmetry(degrees)).isCloseTo(multiplier, within(0.005));
    }

    /** H beyond 63 cm or 25 in, V beyond 175 cm or 70 in, A beyond 135°: 0 (NIOSH Pub. 94-110). */
    @Test
    void recommendsNothingOutOfReach() {
        assertThat(LiftingEquation.METRIC.limit(64, 75, 0, 0)).isZero();
        assertThat(LiftingEquation.METRIC.limit(25, 176, 0, 0)).isZero();
        assertThat(LiftingEquation.US.limit(26, 30, 0, 0)).isZero();
        assertThat(LiftingEquation.US.limit(10, 71, 0, 0)).isZero();
        assertThat(LiftingEquation.METRIC.limit(25, 75, 0, 136)).isZero();
    }

    /** LC 23 kg and 51 lb in the best posture. */
    @Test
    void startsFromItsLoadConstant() {
        assertThat(LiftingEquation.METRIC.limit(20, 75, 20, 0)).isEqualTo(23);
        assertThat(LiftingEquation.US.limit(8, 30, 5, 0)).isEqualTo(51);
    }

    /**
     * Worktop 790: 23 x 25/40 x (1 - 0.003 x 4) = 14.2 kg, for two 2 x 23 x 25/30 x (1 - 0.003 x 4) = 37.9 kg (NIOSH Pub.
     * 94-110). 38 kg is 1.003 times that, which is printed as 1; 39 kg is more.
     */
    @Test
    void warnsOfAMachineThatOnePersonShouldNotLift() {
        assertThat(Stands.found(Stands.withMachine(machine -> machine.mass = 28), "machine-lifting"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.message())
                            .contains(
                                    "It weighs 28 kg. From a bench or cart 750 mm high to the worktop at 790 mm",
                                    "one person should lift 14.2 kg at most: a lifting index of 1.97. Two at its ends should lift"
                                            + " 37.9 kg, an index of 0.74 for each: lift it with two persons or a hoist.");
                });
        assertThat(Stands.found(Stands.withMachine(machine -> {}), "machine-lifting"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .contains("It weighs 38 kg", "an index of 1 for each: lift it with two persons or a hoist."));
        assertThat(Stands.found(Stands.withMachine(machine -> machine.mass = 39), "machine-lifting"))
                .singleElement()
                .satisfies(
                        finding -> assertThat(finding.message()).endsWith("an index of 1.03 for each: use a hoist."));
        assertThat(Stands.found(Stands.withMachine(machine -> machine.mass = 14), "machine-lifting"))
                .isEmpty();
    }

    /** 51 lb x 10/15.748 x (1 - 0.0075 x (31.102 - 30)) = 32.1 lb. */
    @Test
    void speaksThePoundsOfItsMaker() {
        var inches = Stands.plain(draft -> draft.unit = Units.INCH);

        assertThat(Stands.found(inches, "machine-lifting"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("one person should lift 32.1 lb at most"));
    }

    @Test
    void locksCastersBeforeALift() {
        assertThat(Stands.found(Stands.plain(draft -> draft.support = Designs.CASTERS), "machine-lifting"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).endsWith("; lock the casters first."));
    }
}
