package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.check.wall.Hung.INCH;
import static org.standwright.check.wall.Hung.POUND;
import static org.standwright.check.wall.Hung.figure;
import static org.standwright.check.wall.Hung.only;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Spot;

/**
 * The worked example of references 3.8 hung on a whole wall: 50 lbf, 8 in out, 6 in of drop, T = 63.54 lbf. Only the screws
 * are where the design puts them, 1.375 in up and not 1.75 in.
 */
class StripStrengthTest {
    /** The strip's own weight on each of two studs: 609.6 x 88.9 x 19.05 mm at 680 kg/m3, 0.702 kg, halved, lbf. */
    private static final double OWN = 0.7738;
    /** It turns about the lower edge t/2 out, 9.525 mm, and the screw is 34.925 mm up, lbf. */
    private static final double OWN_OUT = OWN * 9.525 / 34.925;

    private static HungWall worked(Hung wall) {
        return wall.worked(50 * POUND, 8 * INCH, 6 * INCH);
    }

    /** Two studs, half each: (63.54 x 3.125 + 50 x 0.375) / (2 x 1.375) = 79.02 lbf, and {@link #OWN}; W'p = 0.9 x 167.16 = 150.4 lbf. */
    @Test
    void drawsTheScrewsOfTheWorkedExample() {
        var finding = only(new CleatWithdrawal(), worked(new Hung()));

        assertThat(finding.gauge().orElseThrow().figure()).isCloseTo((79.02 + OWN_OUT) * POUND, within(0.01 * POUND));
        assertThat(finding.gauge().orElseThrow().limit().stop().getAsDouble())
                .isCloseTo(150.4 * POUND, within(0.1 * POUND));
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
        assertThat(finding.message()).contains("'unit'", "406.4 mm");
    }

    /** 50 / 2 = 25 lbf and {@link #OWN}; Z' = 0.9 x 51.64 = 46.5 lbf across 1/2 in of plasterboard. */
    @Test
    void bendsTheScrewsOfTheWorkedExample() {
        var finding = only(new CleatLateral(), worked(new Hung()));

        assertThat(finding.gauge().orElseThrow().figure()).isCloseTo((25 + OWN) * POUND, within(0.001));
        assertThat(finding.gauge().orElseThrow().limit().stop().getAsDouble())
                .isCloseTo(46.48 * POUND, within(0.05 * POUND));
    }

    /** (25.77 x 25.77 / 46.48 + 79.23 x 79.23 / 150.4) / hypot(25.77, 79.23) = (14.29 + 41.74) / 83.32 = 0.672. */
    @Test
    void combinesBothInTheWorkedExample() {
        assertThat(figure(new CleatCombined(), worked(new Hung()))).isCloseTo(0.672, within(0.001));
    }

    /** 100 lbf and the strip use 1.34 of it; what hangs may weigh 74.7 lbf, 33.9 kg, which with the strip use 1. */
    @Test
    void stopsTwiceTheLoadAndSaysWhatWouldHold() {
        var finding = only(new CleatCombined(), new Hung().worked(100 * POUND, 8 * INCH, 6 * INCH));

        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.gauge().orElseThrow().figure()).isCloseTo(1.3356, within(0.002));
        assertThat(finding.message()).contains("it holds 33.9 kg in all", "A second screw at each stud");
    }

    /** 140 lbf: 2.03 of a screw's weight across and 1.47 of its pull, which are notes beside the one stop. */
    @Test
    void saysOfOneOverloadOnlyOnceWhatToDo() {
        var over = new Hung().worked(140 * POUND, 8 * INCH, 6 * INCH);

        var combined = only(new CleatCombined(), over);
        assertThat(combined.severity()).isEqualTo(Severity.STOP);
        for (var part : List.of(only(new CleatWithdrawal(), over), only(new CleatLateral(), over))) {
            assertThat(part.severity()).isEqualTo(Severity.NOTE);
            assertThat(part.message()).doesNotContain("in all", "hold more");
            assertThat(part.remedies()).isEmpty();
            assertThat(part.gauge().orElseThrow().used()).isGreaterThan(1.4);
        }
    }

    /** 33.9 kg is 74.7 lbf: 210 lbf are less than three times that, 230 lbf are more. */
    @Test
    void givesNoHintWhereNoneHelps() {
        assertThat(only(new CleatCombined(), new Hung().worked(210 * POUND, 8 * INCH, 6 * INCH))
                        .message())
                .contains("A second screw at each stud");
        assertThat(only(new CleatCombined(), new Hung().worked(230 * POUND, 8 * INCH, 6 * INCH))
                        .message())
                .endsWith("it holds 33.9 kg in all.");
    }

    /**
     * Short face 2.75 in: screws 19.3 mm (4 D, more than a quarter) and 52.39 mm up. The upper gets 52.39 / (19.3^2 +
     * 52.39^2) of the moment at its stud, (63.54 x 79.375 + 50 x 9.525) / 2 = 2759.9 lbf mm: 46.39 lbf;
     * and as much of the strip's own, 0.774 x 9.525 lbf mm: 0.12 lbf.
     */
    @Test
    void sharesBetweenTwoScrewsByTheirHeights() {
        var two = new Hung();
        two.perStud = 2;

        assertThat(figure(new CleatWithdrawal(), worked(two))).isCloseTo(46.51 * POUND, within(0.05 * POUND));
        assertThat(figure(new CleatLateral(), worked(two))).isCloseTo((25 + OWN) / 2 * POUND, within(0.001));
    }

    /** 690 pi x 0.5 x 0.42^2 x 0.553 = 105.7 lbf, for good 95.2: 19.05 - 5 = 14.05 mm under the head, DH 12.7 mm. */
    @Test
    void drawsAWasherHeadThroughWhatIsLeftOfTheStrip() {
        var round = new Hung();
        round.washer = OptionalDouble.of(12.7);

        var finding = only(new CleatPullThrough(), worked(round));

        assertThat(finding.gauge().orElseThrow().limit().stop().getAsDouble())
                .isCloseTo(95.15 * POUND, within(0.1 * POUND));
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
    }

    @Test
    void ratesNoCountersunkHeadAndSaysSoOnce() {
        var finding = only(new CleatPullThrough(), worked(new Hung()));

        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
        assertThat(finding.gauge()).isEmpty();
    }

    /** 19.05 + 12.7 + 6 x 4.826 = 60.7 mm is the least; 2 1/4 in = 57.15 mm leave 25.4 mm. */
    @Test
    void countsAScrewWithTooLittleThreadAsNothing() {
        var brief = new Hung();
        brief.length = OptionalDouble.of(2.25 * INCH);

        var finding = only(new CleatWithdrawal(), worked(brief));

        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.message()).contains("25.4 mm", "counts as holding nothing", "holds 0 kg in all");
        assertThat(new CleatCombined().check(worked(brief))).isEmpty();
    }

    @Test
    void saysLoadsAndNoCapacityForSteelAndMasonry() {
        for (var framing : List.<Framing>of(
                new Framing.SteelStuds(12.7, OptionalDouble.empty(), 0, List.of(406.4, 812.8), 40),
                new Framing.Masonry(12.7, OptionalDouble.empty(), 0, List.of(406.4, 812.8), "nylon anchor", 8, 40))) {
            var other = new Hung();
            other.framing = framing;

            var finding = only(new CleatFraming(), worked(other));

            // 79.23 and 25.77 lbf, as in wood
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.message()).contains("352.5 N", "114.6 N", "the anchor's maker");
            assertThat(new CleatWithdrawal().check(worked(other))).isEmpty();
            assertThat(new CleatLateral().check(worked(other))).isEmpty();
            assertThat(new CleatCombined().check(worked(other))).isEmpty();
            assertThat(new CleatPullThrough().check(worked(other))).isEmpty();
        }
        assertThat(new CleatFraming().check(worked(new Hung()))).isEmpty();
    }

    @Test
    void refusesToRateAScrewThinnerThanNumberSix() {
        var thin = new Hung();
        thin.screw = 3.4;

        assertThat(new CleatWithdrawal().check(worked(thin))).isEmpty();
        assertThat(only(new CleatFraming(), worked(thin)).message()).contains("thinner than #6");
    }

    /** One panel over each of two studs, none reaching the other: shares add up at the stud between. */
    @Test
    void addsUpWhatHangsOnOneStrip() {
        var one = new Hung();
        one.holders = List.of(Hung.panel("left", 10, 150, false, Optional.of(new Spot("north", 1, 400))));
        var both = new Hung();
        both.holders = List.of(
                one.holders.get(0), Hung.panel("right", 10, 150, false, Optional.of(new Spot("north", 1, 660))));

        var alone = new CleatLateral().check(one.hung());
        var together = new CleatLateral().check(both.hung());

        assertThat(together).hasSize(1);
        assertThat(together.get(0).message()).contains("'left', 'right'");
        assertThat(load(together)).isGreaterThan(load(alone) * 1.05);
    }

    private static double load(List<Finding> findings) {
        return findings.get(0).gauge().orElseThrow().figure();
    }
}
