package org.standwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

class PocketTest {
    private static final double ROOT_3 = Math.sqrt(3);

    private static Pocket pocket(double radius, Vec2... corners) {
        return new Pocket(Face.SHOW, outline(corners), radius, OptionalDouble.of(9), "plate");
    }

    private static Outline outline(Vec2... corners) {
        return new Outline(Arrays.asList(corners));
    }

    /** Sides of 60 mm. */
    private static Pocket triangle(double radius) {
        return pocket(radius, new Vec2(100, 100), new Vec2(160, 100), new Vec2(130, 100 + 30 * ROOT_3));
    }

    @Test
    void aRadiusTakesAsMuchOfASideAsItsCornerIsSharp() {
        // r / tan(half the angle): of 60° √3 r, of 90° r, of 120° r / √3
        assertThat(triangle(6).rounding(0)).isCloseTo(6 * ROOT_3, within(1e-9));
        var trapezoid =
                pocket(6, new Vec2(0, 0), new Vec2(100, 0), new Vec2(100 - 50 / ROOT_3, 50), new Vec2(50 / ROOT_3, 50));
        assertThat(trapezoid.rounding(1)).isCloseTo(6 * ROOT_3, within(1e-9));
        assertThat(trapezoid.rounding(2)).isCloseTo(6 / ROOT_3, within(1e-9));
        assertThat(Pocket.through(new Rect(0, 0, 50, 30), 6, "plate").rounding(3))
                .isCloseTo(6, within(1e-9));
    }

    @Test
    void aCornerThatPointsInwardsTakesNothing() {
        var notched = pocket(6, new Vec2(0, 0), new Vec2(100, 0), new Vec2(100, 80), new Vec2(50, 30), new Vec2(0, 80));

        assertThat(notched.rounding(3)).isZero();
        // 45°: 6 / tan 22.5° = 6 (1 + √2)
        assertThat(notched.rounding(2)).isCloseTo(6 * (1 + Math.sqrt(2)), within(1e-9));
    }

    @Test
    void aRadiusIsAtMostThatOfTheCircleInside() {
        // in a triangle of equal sides a: a / (2 √3)
        assertThat(triangle(60 / (2 * ROOT_3)).radius()).isCloseTo(17.320508, within(1e-6));
        assertThatThrownBy(() -> triangle(18))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("corner radius of 'plate' is 18.000 mm, but on its side of 60.000 mm it can be at most"
                        + " 17.321 mm.");
    }

    @Test
    void anOutlineTurnsLeftHoweverItIsTold() {
        var told = outline(new Vec2(0, 0), new Vec2(0, 50), new Vec2(80, 0));

        assertThat(told.area()).isEqualTo(80 * 50 / 2.0);
        assertThat(told.corners()).containsExactly(new Vec2(80, 0), new Vec2(0, 50), new Vec2(0, 0));
    }

    @Test
    void anOutlineEnclosesSomething() {
        assertThatThrownBy(() -> outline(new Vec2(0, 0), new Vec2(50, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("outline (0.000, 0.000) (50.000, 0.000) encloses nothing; give three corners or more that"
                        + " don't lie in a row.");
        assertThatThrownBy(() -> outline(new Vec2(0, 0), new Vec2(50, 0), new Vec2(100, 0)))
                .hasMessageContaining("encloses nothing");
    }

    @Test
    void anOutlineMeetsItselfInItsCornersOnly() {
        assertThatThrownBy(() -> outline(new Vec2(0, 0), new Vec2(90, 50), new Vec2(100, 0), new Vec2(0, 60)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("outline (0.000, 0.000) (90.000, 50.000) (100.000, 0.000) (0.000, 60.000) meets itself;"
                        + " list its corners in turn, all the way round.");
        // a corner on another side
        assertThatThrownBy(() ->
                        outline(new Vec2(0, 0), new Vec2(100, 0), new Vec2(100, 50), new Vec2(50, 0), new Vec2(0, 50)))
                .hasMessageContaining("meets itself");
    }
}
