package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.check.wall.Hung.INCH;
import static org.standwright.check.wall.Hung.POUND;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.check.Severity;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Things;
import org.standwright.geom.Interval;

/** What may hang at most, on the wall of the worked example. */
class LoadLimitsTest {

    /**
     * Nothing hung: 150 mm out, 88.9 - 9.525 = 79.375 mm of drop, T = W (150 - 9.525) / 79.375 = 1.770 W. A stretch of 406.4
     * mm at the end of the strip, 101.6 mm beyond the stud, has its middle a quarter of the way to the next: three quarters
     * of it on the first. Fw = 0.75 (1.770 x 79.375 + 9.525) / 34.925 W = 3.221 W + 0.94 N, Fv = 0.75 W + 3.44 N, the strip's
     * own with them. With W'p = 669.2 N and Z' = 206.8 N that uses 1 at 180.1 N, 18.37 kg.
     */
    @Test
    void limitsABareStripByItsScrews() {
        var bare = new Hung();
        bare.holders = List.of();

        var limits = LoadLimits.of(bare.hung());

        assertThat(limits.holders()).isEmpty();
        assertThat(limits.strips()).hasSize(1);
        var limit = limits.strips().values().iterator().next();
        assertThat(limit.mass()).isCloseTo(18.37, within(0.05));
        assertThat(limit.weakest()).isEqualTo("the screw is bent and drawn out at once");
    }

    /** The same in the worked example: at the end of its strip a unit as wide as the studs are apart uses all of a screw. */
    @Test
    void limitsAStripAsItsWorstHolderHangsAtItsEnd() {
        var end = new Hung();
        end.holders = List.of(Hung.panel("unit", 10, 406.4, false, Optional.of(new Spot("north", 1, 304.8))));

        double most = ofStrip(end);

        assertThat(most).isCloseTo(22.59, within(0.02));
        var full = end.worked(most * Hung.STANDARD, 8 * INCH, 6 * INCH);
        assertThat(Hung.figure(new CleatCombined(), full)).isCloseTo(1, within(1e-6));
    }

    private static double ofStrip(Hung wall) {
        return LoadLimits.of(wall.worked(50 * POUND, 8 * INCH, 6 * INCH))
                .strips()
                .values()
                .iterator()
                .next()
                .mass();
    }

    /** A strip over six studs, wherever what it holds within one spacing hangs on it. */
    @Test
    void holdsItsLimitOnAnyStretch() {
        var wall = sixStuds();
        double most = 0;
        for (double x = 304.8; x <= 2133.6; x += 50.8) {
            wall.holders = List.of(Hung.panel("unit", 10, 406.4, false, Optional.of(new Spot("north", 1, x))));
            double limit = ofStrip(wall);
            double used = Hung.figure(new CleatCombined(), wall.worked(limit * Hung.STANDARD, 8 * INCH, 6 * INCH));
            assertThat(used).as("at %s mm", x).isLessThanOrEqualTo(1 + 1e-9);
            most = Math.max(most, used);
        }
        assertThat(most).isGreaterThan(0.75);
    }

    private static Hung sixStuds() {
        var wall = new Hung();
        wall.width = 2844.8;
        wall.framing = Hung.studs(406.4, 812.8, 1219.2, 1625.6, 2032.0, 2438.4);
        return wall;
    }

    /** Over a stud one stretch rests on it alone; two side by side give the stud between 5/4 of one. */
    @Test
    void countsStretchesSideBySide() {
        var studs = List.of(0.0, 400.0, 800.0);

        assertThat(new Stretches(studs, new Interval(0, 800), 400).most()).isCloseTo(1.25, within(1e-9));
        assertThat(new Stretches(List.of(0.0, 400.0), new Interval(0, 400), 400).most())
                .isCloseTo(0.5, within(1e-9));
        assertThat(new Stretches(List.of(0.0, 400.0), new Interval(0, 400), 600).most())
                .isCloseTo(0.5, within(1e-9));
    }

    /** A shelf 347 mm deep with nothing much in it but a hand at its front. */
    @Test
    void countsAHandOnTheFrontOfAHolder() {
        var wall = new Hung();
        wall.perStud = 2;
        wall.length = OptionalDouble.of(4 * INCH);
        wall.holders = List.of(Hung.shelf("shelf", new Things(1, 90, 300, 100, 1, Things.Use.WEEKLY, false), 420));
        var hung = wall.worked(40, 4 * INCH, 3 * INCH);

        assertThat(Hung.only(new HangLip(), hung).severity()).isEqualTo(Severity.STOP);
        assertThat(Hung.only(new HangRideOut(), hung).severity()).isNotEqualTo(Severity.STOP);
        var limit = LoadLimits.of(hung).holders().get("shelf");
        assertThat(limit).isEqualTo(new MostHung(0, "a hand on its front tips it"));
    }

    /** Hanger screws take less than the strip's. */
    @Test
    void limitsAHolderByItsWeakestLink() {
        var limit = LoadLimits.of(new Hung().worked(20 * POUND, 8 * INCH, 6 * INCH))
                .holders()
                .get("unit");

        assertThat(limit.weakest()).isEqualTo("the hanger's screws give");
        assertThat(limit.mass()).isPositive();
    }

    @Test
    void limitsNothingWhereNoSourceRatesTheScrews() {
        var steel = new Hung();
        steel.framing = new Framing.SteelStuds(12.7, OptionalDouble.empty(), 0, List.of(406.4, 812.8), 40);

        assertThat(LoadLimits.of(steel.hung()).strips()).isEmpty();
        assertThat(LoadLimits.of(steel.hung()).holders()).isEmpty();
    }
}
