package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
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

    @ParameterizedTest
    @EnumSource
    void stopsAtSixtyFourSides(Fineness fineness) {
        assertThat(fineness.sides(5000)).isEqualTo(64);
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
