package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.standwright.check.bending.Asked.about;
import static org.standwright.check.bending.Asked.cured;
import static org.standwright.check.bending.Asked.figure;
import static org.standwright.check.bending.Asked.of;
import static org.standwright.check.bending.Asked.severity;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.Presets;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.Draft;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.kit.WorkingForce;

class CarcassRulesTest {
    private static final Racking RACKING = new Racking();
    private static final WideDrawer WIDE = new WideDrawer();
    private static final PlateOpeningSag PLATE = new PlateOpeningSag();

    /** F / b, any book on strength of materials: 150 N over 720 mm; 800 N are 1.11 N/mm. */
    @Test
    void spreadsAPushOverTheBacksEdge() {
        var plain = Stands.plain(draft -> {});
        var worked = Stands.withMachine(machine -> machine.workingForce = Optional.of(new WorkingForce(800, 100)));

        assertThat(figure(about("back", RACKING, plain))).isCloseTo(150 / 720.0, withPercentage(1e-9));
        assertThat(severity("back", RACKING, plain)).isEqualTo(Severity.FINE);
        assertThat(severity("back", RACKING, worked)).isEqualTo(Severity.CAUTION);
    }

    /** Opening 1000 - 2 x 18, box 26 less: 938 on slides of 500 is 1.9 times as wide as long. */
    @Test
    void doubtsDrawersWiderThanOneAndAHalfSlides() {
        var wide = Stands.plain(draft -> draft.plan(1000, 560));
        var finding = about("bay 1", WIDE, wide);

        assertThat(figure(finding)).isCloseTo(938 / 500.0, withPercentage(1e-9));
        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
        assertThat(finding.message()).contains("938 mm wide on slides of 500 mm");
        assertThat(severity("bay 1", WIDE, Stands.plain(draft -> {}))).isEqualTo(Severity.FINE);
        assertThat(severity("bay 2", WIDE, cured("halves", finding, wide))).isEqualTo(Severity.FINE);
    }

    /** Half of 3000 kg over 18 x 560 mm is over 1 N/mm². */
    @Test
    void cautionsWhereSidesAreCrushed() {
        assertThat(of(new SideBearing(), Stands.plain(draft -> {})).get(0).severity())
                .isEqualTo(Severity.FINE);
        assertThat(of(new SideBearing(), heavy(3000)).get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(figure(of(new SideBearing(), heavy(3000)).get(0))).isCloseTo(1.5, withPercentage(5));
    }

    /** Sides of 560 x 18 mm over a toe space of 60: they stand on 500 x 18. */
    @Test
    void standOnNothingOverAToeSpace() {
        var loaded = Stands.loaded(Stands.plain(draft -> draft.support = new Support.Plinth(80, 60, 5)));
        double carried = new UprightLoads(loaded).of(Named.part(loaded.stand(), "left side"));

        assertThat(figure(new SideBearing().check(loaded).get(0))).isCloseTo(carried / (500 * 18), withPercentage(1));
    }

    /** Euler: pi² 6500 (560 x 18³ / 12) / L², over what is carried. */
    @Test
    void cautionsWhereSidesBuckle() {
        var rule = new SideBuckling();
        var loaded = Stands.loaded(heavy(6000));
        var side = Named.part(loaded.stand(), "left side");
        double height = side.part().length();
        double carried = new UprightLoads(loaded).of(side);
        double euler = Math.PI * Math.PI * 6500 * 560 * 18 * 18 * 18 / 12 / (height * height);

        var finding = rule.check(loaded).get(0);

        assertThat(of(rule, Stands.plain(draft -> {})).get(0).severity()).isEqualTo(Severity.FINE);
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(figure(finding)).isCloseTo(euler / carried, withPercentage(0.1));
    }

    @Test
    void bringsDownEverythingAboveTheBottom() {
        var loaded =
                Stands.loaded(Stands.plain(draft -> draft.bays = List.of(bay(equal(3)), bay(equal(2)), bay(equal(4)))));
        double under = loaded.weights().stream()
                .filter(weight ->
                        weight.group().equals("support") || weight.what().equals("bottom"))
                .mapToDouble(weight -> weight.mass())
                .sum();
        var carried = new UprightLoads(loaded);
        double all = Uprights.of(loaded.stand()).all().stream()
                .mapToDouble(carried::of)
                .sum();

        assertThat(all).isCloseTo((loaded.mass() - under) * 9.80665, withPercentage(1e-6));
    }

    @Test
    void cautionsAndStopsTheTopBesideARoutersPlate() {
        assertThat(severity("router plate", PLATE, router(7.5))).isEqualTo(Severity.FINE);
        assertThat(severity("router plate", PLATE, router(90))).isEqualTo(Severity.CAUTION);
        assertThat(severity("router plate", PLATE, router(400))).isEqualTo(Severity.STOP);
        assertThat(of(PLATE, Stands.plain(draft -> {}))).isEmpty();
        assertThat(of(new TopSag(), router(7.5))).isEmpty();
    }

    private static StandDesign heavy(double mass) {
        return Stands.withMachine(machine -> machine.mass = mass);
    }

    private static StandDesign router(double mass) {
        var preset = Presets.stands()
                .filter(design -> design.worktop().plate().isPresent())
                .findFirst()
                .orElseThrow();
        return Draft.of(
                preset, draft -> draft.machine = Draft.OfMachine.of(draft.machine, machine -> machine.mass = mass));
    }
}
