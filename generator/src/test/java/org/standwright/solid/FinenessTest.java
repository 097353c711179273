package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FinenessTest {
    @ParameterizedTest
    @CsvSource({"FILE, 2.5, 16", "FILE, 4, 20", "FILE, 17.5, 44", "SCREEN, 2.5, 12", "SCREEN, 4, 16", "SCREEN, 17.5, 32"
    })
    void givesLargerHolesMoreSidesInFours(Fineness fineness, double radius, int sides) {
        assertThat(fineness.sides(radius)).isEqualTo(sides);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.02, 0.05, 0.3})
    void givesTinyHolesTwelveSides(double radius) {
        assertThat(Fineness.FILE.sides(radius)).isEqualTo(12);
    }

    /** Outside at the corners, inside in the middle of the sides. */
    @ParameterizedTest
    @CsvSource({"FILE, 0.05", "SCREEN, 0.1"})
    void staysWithinItsToleranceOfTheCircle(Fineness fineness, double tolerance) {
        for (double radius = 0.5; radius < 2000; radius *= 1.1) {
            double reach = fineness.cornerRadius(radius);
            double middle = reach * Math.cos(Math.PI / fineness.sides(radius));
            assertThat(reach - radius).as("outside, r %f", radius).isBetween(0.0, tolerance);
            assertThat(radius - middle).as("inside, r %f", radius).isBetween(0.0, tolerance);
        }
    }

    @ParameterizedTest
    @CsvSource({"FILE, 0.05", "SCREEN, 0.1"})
    void staysWithinItsToleranceOfAnArc(Fineness fineness, double tolerance) {
        for (double radius = 0.5; radius < 2000; radius *= 1.1) {
            for (double angle = 0.1; angle < 3; angle += 0.1) {
                int chords = fineness.chords(radius, angle);
                double out = Fineness.arcRadius(radius, angle, chords);
                double half = Math.cos(angle / chords / 2);
                assertThat(out - radius).as("outside, r %f, %f", radius, angle).isBetween(0.0, tolerance);
                assertThat(radius - Math.min(radius, out) * half).as("inside").isLessThan(tolerance);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2.5, 30, 500})
    void drawsThePolygonAsLargeAsTheCircle(double radius) {
        int n = Fineness.FILE.sides(radius);
        double reach = Fineness.FILE.cornerRadius(radius);

        double polygon = n / 2.0 * reach * reach * Math.sin(2 * Math.PI / n);
        assertThat(polygon).isCloseTo(Math.PI * radius * radius, within(1e-9 * radius * radius));
    }
}
