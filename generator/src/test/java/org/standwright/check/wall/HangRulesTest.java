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
import org.standwright.check.Input;
import org.standwright.check.Severity;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.Things.Use;

/** Rules of single holders, on the wall of the worked example. */
class HangRulesTest {
    private static final Optional<Spot> AT_STUDS = Optional.of(new Spot("north", 1, 406.4));

    private static Hung wall(Holder... holders) {
        var wall = new Hung();
        wall.holders = List.of(holders);
        return wall;
    }

    /** On a wall with four studs. */
    private static Hung longer(Holder... holders) {
        var wall = wall(holders);
        wall.width = 2000;
        wall.framing = Hung.studs(406.4, 812.8, 1219.2, 1625.6);
        return wall;
    }

    private static double input(Finding finding, String symbol) {
        return finding.inputs().stream()
                .filter(input -> input.symbol().equals(symbol))
                .mapToDouble(Input::value)
                .findFirst()
                .orElseThrow();
    }

    /** (8 - 0.375) / 6 = 1.271; tan 45 with friction 0.3: 1.3 / 0.7 = 1.857, of which 0.8 is 1.486. */
    @Test
    void leavesTheWorkedExampleOnItsBevel() {
        var finding = only(new HangRideOut(), new Hung().worked(50 * POUND, 8 * INCH, 6 * INCH));

        assertThat(finding.gauge().orElseThrow().figure()).isCloseTo(1.2708, within(0.0001));
        assertThat(finding.gauge().orElseThrow().limit().stop().getAsDouble()).isCloseTo(1.8571, within(0.0001));
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
    }

    /** 7.625 / 5 = 1.525 is between 1.486 and 1.857; 7.625 / 4 = 1.906 is beyond. */
    @Test
    void letsAShallowHolderRideOut() {
        assertThat(only(new HangRideOut(), new Hung().worked(50 * POUND, 8 * INCH, 5 * INCH))
                        .severity())
                .isEqualTo(Severity.CAUTION);
        assertThat(only(new HangRideOut(), new Hung().worked(50 * POUND, 8 * INCH, 4 * INCH))
                        .severity())
                .isEqualTo(Severity.STOP);
    }

    @Test
    void holdsALockedHolderOnItsBevel() {
        var loose = new Hung().worked(50 * POUND, 8 * INCH, 4 * INCH);
        var locked = wall(Hung.panel("unit", 10, 406.4, true, AT_STUDS)).worked(50 * POUND, 8 * INCH, 4 * INCH);

        var finding = only(new HangRideOut(), locked);

        assertThat(finding.severity()).isNotEqualTo(Severity.STOP);
        double held = new HolderScrews(locked, locked.loads().get(0).holder()).lock();
        // #8 across into plywood carries a few hundred newtons: two of them, for good
        assertThat(held).isBetween(200.0, 700.0);
        assertThat(finding.gauge().orElseThrow().limit().stop().getAsDouble())
                .isCloseTo(13.0 / 7 * (1 + held / (50 * POUND)), within(0.001));
        assertThat(new HolderScrews(loose, loose.loads().get(0).holder()).lock())
                .isZero();
    }

    /** Panel and hanger weigh 2 kg. */
    @Test
    void wantsALockAboveFiveKilogramsAndOverhead() {
        assertThat(new HangKnock().check(wall(Hung.panel("unit", 2)).hung())).isEmpty();

        var heavy = only(new HangKnock(), wall(Hung.panel("unit", 6)).hung());
        assertThat(heavy.severity()).isEqualTo(Severity.CAUTION);
        assertThat(cured(heavy, wall(Hung.panel("unit", 6)).design())
                        .holders()
                        .get(0)
                        .lock())
                .isTrue();
        assertThat(new HangKnock()
                        .check(wall(Hung.panel("unit", 6, 406.4, true, AT_STUDS))
                                .hung()))
                .isEmpty();

        var high = wall(Hung.panel("unit", 2));
        high.rows = new Rows.Fixed(1700, 1700, 400);
        assertThat(only(new HangKnock(), high.hung()).message()).contains("overhead");
    }

    private static WallDesign cured(Finding finding, WallDesign design) {
        return (WallDesign) finding.remedies().get(0).change().apply(design).orElseThrow();
    }

    /**
     * A hand of 100 N on the panel's front, 37.05 mm out, and 30 lbf, 133.4 N, at 8 in: (133.4 x 203.2 + 100 x 37.05) / 233.4
     * = 132.0 mm out; less 9.525 over 152.4 is 0.804, 0.433 of 1.857.
     */
    @Test
    void pressesOnTheFrontOfAHolder() {
        var finding = only(new HangLip(), new Hung().worked(30 * POUND, 8 * INCH, 6 * INCH));

        assertThat(input(finding, "f")).isCloseTo(37.05, within(0.001));
        assertThat(input(finding, "F")).isEqualTo(100);
        assertThat(finding.message())
                .contains("it uses 0.43 of what keeps it from riding out", "of its strip's screws");
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
    }

    /** A shelf 347 mm deep, 40 N at 102 mm and 100 N at its front: at 277 mm, 1.76 at 6 in of drop, and 3.5 at 3 in. */
    @Test
    void letsAHandTipAHolderThatLeansOnTheWallCloseBelow() {
        var light = wall(Hung.shelf("shelf", new Things(1, 90, 300, 100, 1, Use.WEEKLY, false), 420));

        assertThat(only(new HangLip(), light.worked(40, 4 * INCH, 6 * INCH)).message())
                .contains("0.94 of what keeps it from riding out");
        var shallow = only(new HangLip(), light.worked(40, 4 * INCH, 3 * INCH));
        assertThat(shallow.severity()).isEqualTo(Severity.STOP);
        assertThat(shallow.message()).contains("1.89 of what keeps it from riding out");
        assertThat(shallow.remedies().get(0).words()).contains("screwed to its strip");
    }

    @Test
    void pressesAlikeWhateverItHolds() {
        var finding = only(new HangLip(), wall(Hung.panel("unit", 40)).hung());

        assertThat(input(finding, "F")).isEqualTo(100);
    }

    /** (63.54 x 3.125 + 50 x 0.375) / (3 x 1.375) = 52.68 lbf on each of three screws, and 16.67 lbf across. */
    @Test
    void drawsTheHangerOffItsBack() {
        var finding = only(new HangerScrews(), new Hung().worked(50 * POUND, 8 * INCH, 6 * INCH));

        assertThat(input(finding, "Fw")).isCloseTo(52.68 * POUND, within(0.01 * POUND));
        assertThat(input(finding, "Fv")).isCloseTo(50 / 3.0 * POUND, within(0.01 * POUND));
        // 35 mm, #8: 35 - 18 = 17 mm in the hanger, less than 6 x 4.166 = 25 mm; 14.439 N/mm at G 0.42, references 3.3
        assertThat(input(finding, "W'p")).isCloseTo(0.9 * 14.439 * 17, within(0.1));
        assertThat(finding.message()).contains("Not rated by itself");
    }

    @Test
    void stopsAHangerTooWeakForItsLoad() {
        var stopped = only(new HangerScrews(), new Hung().worked(50 * POUND, 8 * INCH, 6 * INCH));
        assertThat(stopped.severity()).isEqualTo(Severity.STOP);
        assertThat(stopped.message()).contains("two smaller holders");
        assertThat(only(new HangerScrews(), new Hung().worked(20 * POUND, 8 * INCH, 6 * INCH))
                        .severity())
                .isEqualTo(Severity.FINE);
    }

    @Test
    void countsStudsBehindAHolder() {
        assertThat(figure(new HangSupport(), wall(Hung.panel("unit", 2)).hung()))
                .isEqualTo(2);

        var between = only(
                new HangSupport(),
                wall(Hung.panel("unit", 2, 200, false, Optional.of(new Spot("north", 1, 500))))
                        .hung());
        assertThat(between.severity()).isEqualTo(Severity.CAUTION);
        assertThat(between.remedies()).hasSize(1);
    }

    /**
     * Six things 90 mm wide with 20 mm between: 680 mm, two spans with brackets of 18 mm: (680 - 3 x 18) / 2 = 313 mm
     * clear. By hand in the test: 5 W L^3 / (384 E I) x 1.8.
     */
    @Test
    void sagsAsABeamBetweenBrackets() {
        var things = new Things(6, 90, 200, 100, 4, Use.WEEKLY, false);
        var shelf = longer(Hung.shelf("shelf", things, 400));

        var finding = only(new HolderShelfSag(), shelf.hung());

        double depth = 200 + 10 + 6;
        double board = 0.680 * depth / 1000 * 0.018 * 680;
        double load = (24 + board) * Hung.STANDARD * 313 / 680;
        double inertia = depth * 18 * 18 * 18 / 12;
        double sag = 1.8 * 5 * load * Math.pow(313, 3) / (384 * 6500 * inertia);
        assertThat(finding.gauge().orElseThrow().figure()).isCloseTo(sag, within(0.001 * sag));
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
        assertThat(finding.gauge().orElseThrow().limit().stop().getAsDouble()).isCloseTo(313.0 / 144, within(1e-9));

        var heavy = longer(Hung.shelf("shelf", new Things(6, 90, 200, 100, 600, Use.WEEKLY, false), 400));
        assertThat(only(new HolderShelfSag(), heavy.hung()).severity()).isEqualTo(Severity.STOP);
    }

    /** Elbow 1050 mm, eyes 1600 mm. */
    @Test
    void saysWhatIsOutOfReach() {
        assertThat(new HangReach().check(wall(Hung.panel("unit", 12)).hung())).isEmpty();

        var high = wall(Hung.panel("unit", 12));
        high.rows = new Rows.Fixed(1900, 1900, 400);
        assertThat(only(new HangReach(), high.hung()).severity()).isEqualTo(Severity.CAUTION);

        var light = wall(Hung.panel("unit", 2));
        light.rows = high.rows;
        assertThat(only(new HangReach(), light.hung()).severity()).isEqualTo(Severity.NOTE);
    }

    /** 25 kg with what the panel weighs: at 1200 mm, 400 mm out, raised by 450 mm. */
    @Test
    void saysWhatOnePersonShouldLift() {
        assertThat(new WallLifting().check(wall(Hung.panel("unit", 5)).hung())).isEmpty();

        var finding = only(new WallLifting(), wall(Hung.panel("unit", 25)).hung());

        // 23 x 25/40 x (1 - 0.003 x 45) x (0.82 + 4.5/45) = 11.44 kg
        assertThat(input(finding, "RWL")).isCloseTo(11.44, within(0.01));
        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
    }

    /** The strip of two studs ends 101.6 mm beyond each, a quarter of 406.4 mm. */
    @Test
    void bendsTheEndOfAStrip() {
        var end = wall(Hung.panel("unit", 30, 203.2, false, Optional.of(new Spot("north", 1, 711.2))));

        var findings = new CleatOverhang().check(end.hung());

        assertThat(findings)
                .extracting(finding -> finding.subject().split(", ")[1])
                .containsOnly("right end");
        assertThat(findings).hasSize(2);
        double whole = end.hung().loads().get(0).mass() * Hung.STANDARD;
        assertThat(input(findings.get(0), "P")).isCloseTo(whole / 2, within(0.01));
        // 6 P c / (t s^2), c 101.6, t 19.05, s 69.85
        assertThat(findings.get(0).gauge().orElseThrow().figure())
                .isCloseTo(6 * whole / 2 * 101.6 / (19.05 * 69.85 * 69.85), within(1e-4));
        assertThat(findings.get(0).severity()).isEqualTo(Severity.FINE);

        var heavy = wall(Hung.panel("unit", 800, 203.2, false, Optional.of(new Spot("north", 1, 711.2))));
        assertThat(new CleatOverhang().check(heavy.hung()).get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(new CleatOverhang().check(wall(Hung.panel("unit", 30)).hung()))
                .isEmpty();
    }

    @Test
    void leavesEveryKindOfHolderAsItIsButForItsLock() {
        var things = new Things(2, 30, 30, 100, 1, Use.DAILY, false);
        var holders = List.<Holder>of(
                Hung.panel("panel", 1),
                Hung.shelf("shelf", things, 0),
                new Holder.Bin("bin", things, Optional.empty(), false, OptionalDouble.empty(), 50),
                new Holder.Hooks("hooks", things, Optional.empty(), false, "hook", 40),
                new Holder.Cabinet("cabinet", things, Optional.empty(), false, 2, 300));
        var design = wall(holders.toArray(Holder[]::new)).design();

        for (var holder : holders) {
            var locked = HolderWith.locked(design, holder.name()).orElseThrow().holders();

            assertThat(locked)
                    .hasSize(5)
                    .filteredOn(Holder::lock)
                    .singleElement()
                    .satisfies(one -> {
                        assertThat(one.getClass()).isEqualTo(holder.getClass());
                        assertThat(one.accept(new HolderWith(holder.place(), false)))
                                .isEqualTo(holder);
                    });
        }
    }
}
