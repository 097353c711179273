package org.standwright.check.balance.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Size3;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.unit.Gravity;

/** The formulas against worked examples. Where no outside source is named, the example is our own statics by hand. */
class BalanceFormulasTest {
    private static final double INCH = 25.4;
    private static final double POUND = 0.45359237;
    private static final Vec2 FRONT = new Vec2(0, -1);
    /** The front edge of a stand whose depth runs along y. */
    private static final TippingEdge EDGE = new TippingEdge(FRONT, 0);

    private static final List<Contact> CASTERS =
            List.of(Contact.at(0, 0), Contact.at(600, 0), Contact.at(0, 400), Contact.at(600, 400));

    /** atan(250 / 600) = 22.620 degrees. */
    @Test
    void leansUntilItsCentreOfMassIsAboveTheEdge() {
        var body = new Body(60, new Vec3(0, 250, 600));

        assertThat(TipAngle.degrees(TipAngle.share(body, EDGE))).isEqualTo(22.620, within(1e-3));
    }

    /** m g b / H = 60 x 9.80665 x 250 / 900 = 163.44 N. */
    @Test
    void aPushTipsWhenItsMomentIsThatOfTheWeight() {
        var weight = EDGE.of(new Body(60, new Vec3(0, 250, 600)));

        assertThat(weight.plus(EDGE.push(163.44, 900)).ratio()).isEqualTo(1, within(1e-4));
        assertThat(weight.restoring() / 900).isEqualTo(163.44, within(0.01));
    }

    /** 40 kg 260 mm behind the pivot, one to three drawers of 15 kg 200 mm before it: 3.4667, 1.7333, 1.1556. */
    @Test
    void eachOpenDrawerTipsMore() {
        var carcass = EDGE.of(new Body(40, new Vec3(0, 260, 500)));
        var drawer = EDGE.of(new Body(15, new Vec3(0, -200, 500)));

        assertThat(carcass.plus(drawer).ratio()).isEqualTo(3.4667, within(1e-4));
        assertThat(carcass.plus(drawer.times(2)).ratio()).isEqualTo(1.7333, within(1e-4));
        assertThat(carcass.plus(drawer.times(3)).ratio()).isEqualTo(1.1556, within(1e-4));
    }

    /**
     * Superseded CPSC rule for clothing storage, 8.5 lb/ft3: 20 x 18 in and 6 in high, 1.22396 ft3, 10.404 lb, 4.719
     * kg.
     */
    @Test
    void fillsADrawerAsTheClothingRuleSays() {
        var inside = new Size3(20 * INCH, 18 * INCH, 6 * INCH);

        assertThat(DrawerFill.volume(inside) / Math.pow(0.3048, 3)).isEqualTo(1.22396, within(1e-3));
        assertThat(DrawerFill.mass(inside)).isEqualTo(4.719, within(1e-3));
        assertThat(DrawerFill.mass(inside) / POUND).isEqualTo(10.404, within(1e-3));
    }

    /** EN 16122:2012, 11.2.2 (forces as quoted by an accredited test report) on 450 N 225 mm behind the edge: 1.979. */
    @Test
    void aHighUnitIsPressedDownAndPulledOut() {
        var top = new Vec3(0, 50, 1200);
        var ratio = newtons(450, new Vec3(0, 225, 600))
                .plus(EDGE.of(Force.down(350, top)))
                .plus(EDGE.of(Force.level(50, FRONT, top)))
                .ratio();

        assertThat(ratio).isEqualTo(1.979, within(1e-3));
    }

    /** EN 16122:2012, 11.2.1 (force as quoted): 750 N 50 mm before the casters, 400 N 175 mm behind them: 1.867. */
    @Test
    void aTopThatReachesOverItsCastersIsPressedDown() {
        var ratio = newtons(400, new Vec3(0, 175, 400))
                .plus(EDGE.of(Force.down(750, new Vec3(0, -50, 800))))
                .ratio();

        assertThat(ratio).isEqualTo(1.867, within(1e-3));
    }

    /** EN 16122:2012, 11.4.2 (force as quoted): 100 N 450 mm in front, 300 N 250 mm behind: 1.667. */
    @Test
    void anOpenPartIsPressedDown() {
        var ratio = newtons(300, new Vec3(0, 250, 400))
                .plus(EDGE.of(Force.down(100, new Vec3(0, -450, 500))))
                .ratio();

        assertThat(ratio).isEqualTo(1.667, within(1e-3));
    }

    /** At the slope of its tip angle a stand is about to fall: 22.620 degrees for 250 over 600. */
    @Test
    void tipsOnASlopeOfItsTipAngle() {
        var body = new Body(60, new Vec3(0, 250, 600));

        assertThat(EDGE.of(body, 22.6199).ratio()).isEqualTo(1, within(1e-5));
        assertThat(EDGE.of(body, 2).ratio())
                .isEqualTo(Math.tan(Math.toRadians(22.6199)) / Math.tan(Math.toRadians(2)), within(1e-3));
    }

    /** A quarter each under the middle; a lever to either side gives the four shares, which make up everything. */
    @Test
    void fourFeetShareALoadByItsLevers() {
        var feet = FourFeet.of(List.of(new Vec2(0, 0), new Vec2(600, 0), new Vec2(600, 400), new Vec2(0, 400)));

        assertThat(feet.most(new Vec2(300, 200))).isEqualTo(0.25, within(1e-12));
        assertThat(feet.most(new Vec2(400, 150))).isEqualTo(400.0 / 600 * 250 / 400, within(1e-12));
        assertThat(feet.most(new Vec2(700, 200))).isEqualTo(0.5, within(1e-12));
    }

    /** r = 50, h = 10: sqrt(2 x 50 x 10 - 100) / 40 = 0.75 of the load on the axle. */
    @Test
    void aWheelIsPushedOverAThresholdLowerThanItsAxle() {
        assertThat(new Threshold(10, 50).pushPerLoad()).isEqualTo(0.75, within(1e-12));
        assertThat(new Threshold(49.9, 50).isPassable()).isTrue();
        assertThat(new Threshold(50, 50).isPassable()).isFalse();
    }

    /** 200 mm behind the axle, pushed 850 mm above it: 200 / (0.75 x 850) = 0.31373. */
    @Test
    void thePushOverAThresholdTipsAboutTheLeadingAxle() {
        var leading = Threshold.edge(CASTERS, FRONT);
        var body = new Body(60, new Vec3(300, 200, 500));

        assertThat(new Threshold(10, 50).of(body, leading, 900).ratio()).isEqualTo(0.31373, within(1e-5));
    }

    /**
     * Forces at the edge (through the axle), at the rear wheels (upright) and at the handle in balance: the rear wheels
     * carry nothing exactly at a ratio of 1.
     */
    @Test
    void itTipsOverAThresholdWhenTheRearWheelsCarryNothing() {
        double handle = 50 + 200 / 0.75;
        var leading = Threshold.edge(CASTERS, FRONT);
        var body = new Body(60, new Vec3(300, 200, 500));
        double weight = 60 * Gravity.STANDARD;
        // moments about the axle: W 200 = rear 400 + push (H - r); push = 0.75 (W - rear)
        double rear = weight * (200 - 0.75 * (handle - 50)) / (400 - 0.75 * (handle - 50));

        assertThat(rear).isEqualTo(0, within(1e-9));
        assertThat(new Threshold(10, 50).of(body, leading, handle).ratio()).isEqualTo(1, within(1e-9));
    }

    /** All swivelled backwards by 35 mm while it rolls to the front. */
    @Test
    void castersTrailTheWayItRolls() {
        var casters = List.of(new Contact(new Vec2(0, 0), 35), new Contact(new Vec2(0, 400), 35));

        assertThat(Threshold.edge(casters, FRONT).inside(new Vec3(0, 235, 500))).isEqualTo(200);
        assertThat(Threshold.edge(casters, FRONT.times(-1)).inside(new Vec3(0, 235, 500)))
                .isEqualTo(130);
    }

    private static Moments newtons(double weight, Vec3 centre) {
        return EDGE.of(Force.down(weight, centre));
    }
}
