package org.standwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.part.Nominal.Standard;

class SheetGoodTest {
    private static final double INCH = 25.4;

    /** 1.22 x 2.44 m of 18 mm birch plywood at 685 kg/m³: its data sheet prints 36.7 kg. */
    @Test
    void weighsABirchSheetLikeItsDataSheet() {
        assertThat(sheet(18, 685, 2440, 1220).mass()).isCloseTo(36.704, within(0.01));
    }

    /** 4 x 8 ft of 23/32 in at 36 lb/ft³ (panel design specification, Table 12, as quoted): 69.0 lb. */
    @Test
    void weighsAFourByEightSheet() {
        double density = 36 * 16.018463374;
        double mass = sheet(INCH * 23 / 32, density, 96 * INCH, 48 * INCH).mass();

        assertThat(mass).isCloseTo(31.298, within(0.001));
        assertThat(mass / 0.45359237).isCloseTo(69.0, within(0.001));
    }

    /**
     * Sanded 18 mm plywood: 17.06 to 18.74 mm by the EN 315 formula as adopted in GB/T 9846; a birch mill's table prints
     * 17.1 to 18.7, so it is compared with 0.05 mm slack.
     */
    @Test
    void allowsSandedMetricPlywoodWhatItsStandardAllows() {
        var nominal = new Nominal(18, Standard.METRIC_SANDED);

        assertThat(nominal.least()).isCloseTo(17.06, within(0.001)).isCloseTo(17.1, within(0.05));
        assertThat(nominal.most()).isCloseTo(18.74, within(0.001)).isCloseTo(18.7, within(0.05));
    }

    /** US Product Standard PS 1, performance-category thickness table, inches as printed. */
    @ParameterizedTest
    @CsvSource({
        "0.71875, 0.688, 0.750",
        "0.875, 0.831, 0.919",
        "1.125, 1.069, 1.181",
        "0.25, 0.219, 0.281",
        "0.5, 0.469, 0.531",
        "0.8125, 0.781, 0.844",
        "1.25, 1.188, 1.313"
    })
    void allowsUnsandedPlywoodWhatPs1Prints(double category, double least, double most) {
        var nominal = new Nominal(category * INCH, Standard.US_UNSANDED);

        assertThat(nominal.least() / INCH).isCloseTo(least, within(0.0006));
        assertThat(nominal.most() / INCH).isCloseTo(most, within(0.0006));
    }

    private static SheetGood sheet(double thickness, double density, double length, double width) {
        return new SheetGood(
                new Material("sheet", thickness, density, Grain.ALONG_LENGTH),
                length,
                width,
                Optional.empty(),
                Optional.empty());
    }
}
