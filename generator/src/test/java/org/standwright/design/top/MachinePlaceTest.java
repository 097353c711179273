package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Worktop;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Side;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Box3;

class MachinePlaceTest {
    /**
     * The press, 300 x 200, over the middle of a carcass 600 x 500. The envelope of 400 x 500 reaches 60 over the left,
     * 40 over the right, 220 over the front and 80 over the back of the base; each turn passes them on counter-clockwise.
     */
    @ParameterizedTest
    @CsvSource({
        "0,   150, 150, 450, 350,  90, -70, 490, 430, FRONT, LEFT",
        "90,  200, 100, 400, 400, 120,  40, 620, 440, RIGHT, FRONT",
        "180, 150, 150, 450, 350, 110,  70, 510, 570, BACK,  RIGHT",
        "270, 200, 100, 400, 400, -20,  60, 480, 460, LEFT,  BACK"
    })
    void turnsCounterClockwise(
            int turn,
            double x0,
            double y0,
            double x1,
            double y1,
            double wholeX0,
            double wholeY0,
            double wholeX1,
            double wholeY1,
            Side operator,
            Side infeed) {
        var machine = machine(turn, null, null, null, null);

        assertThat(seen(machine.base())).containsExactly(x0, y0, x1, y1);
        assertThat(seen(machine.whole())).containsExactly(wholeX0, wholeY0, wholeX1, wholeY1);
        assertThat(machine.operator()).isEqualTo(operator);
        assertThat(machine.infeed()).contains(infeed);
    }

    /** Worktop from 0, -20 to 600, 500. */
    @Test
    void keepsItsMarginsFromTheWorktopsEdges() {
        assertThat(seen(machine(0, 25.0, null, 40.0, null).base())).containsExactly(25, 20, 325, 220);
        assertThat(seen(machine(0, null, 25.0, null, 40.0).base())).containsExactly(275, 260, 575, 460);
        assertThat(seen(machine(90, 25.0, null, null, 40.0).base())).containsExactly(25, 160, 225, 460);
        assertThat(seen(machine(0, -10.0, null, -5.0, null).base())).containsExactly(-10, -25, 290, 175);
    }

    /** Base 300 + 130 + 140 = 570 wide, less an overhang of 10 and 20; 200 + 200 + 150 = 550 deep, less 15 and 5. */
    @Test
    void givesItsSizeToAPlanThatHasNone() {
        var stand = StandBuilder.build(TopDesigns.press(draft -> {
            draft.plan = TopDesigns.plan(null, null);
            draft.place = TopDesigns.place(0, 130.0, 140.0, 200.0, 150.0);
            draft.worktop = new Worktop(Designs.BOARD_18, 2, new Worktop.Overhang(15, 5, 10, 20), Optional.empty());
        }));

        assertThat(stand.carcass().size().x()).isCloseTo(540, within(1e-9));
        assertThat(stand.carcass().size().y()).isCloseTo(530, within(1e-9));
        assertThat(seen(stand.machine().orElseThrow().base())).containsExactly(120, 185, 420, 385);
    }

    /** Without margins the worktop is as wide as the base, wherever it hangs over. */
    @Test
    void countsMarginsThatAreLeftOutAsNothing() {
        var stand = StandBuilder.build(Draft.of(TopDesigns.stand(bay(equal(3))), draft -> {
            draft.plan = TopDesigns.plan(null, 560.0);
            draft.worktop = new Worktop(Designs.BOARD_18, 2, new Worktop.Overhang(0, 0, 30, 0), Optional.empty());
        }));

        assertThat(stand.carcass().size().x()).isCloseTo(530, within(1e-9));
        assertThat(seen(stand.machine().orElseThrow().base())).containsExactly(-30, 100, 530, 460);
    }

    /** 300 + 100 + 150 = 550, not 600. Each way out builds. */
    @Test
    void refusesMarginsThatDoNotAddUpToTheWidth() {
        var refusal =
                Refusals.of(TopDesigns.press(draft -> draft.place = TopDesigns.place(0, 100.0, 150.0, null, null)));

        assertThat(refusal.field()).isEqualTo("/place/margins");
        assertThat(Refusals.figure(refusal, "the right margin ([0-9.]+) mm")).isEqualTo(200);
        assertThat(Refusals.figure(refusal, "the left margin ([0-9.]+) mm")).isEqualTo(150);
        assertThat(Refusals.figure(refusal, "the plan ([0-9.]+) mm wide")).isEqualTo(550);
        machine(0, 100.0, 200.0, null, null);
        machine(0, 150.0, 150.0, null, null);
        StandBuilder.build(TopDesigns.press(draft -> {
            draft.place = TopDesigns.place(0, 100.0, 150.0, null, null);
            draft.plan(550, 500);
        }));
    }

    @Test
    void refusesAPlanWithoutSizeWhereNoMachineStands() {
        var routerTable = TopDesigns.press(draft -> {
            draft.machine = Draft.OfMachine.of(
                    TopDesigns.PRESS, machine -> machine.reference = Reference.fixed(Reference.Kind.WORKTOP, 0));
            draft.plan = TopDesigns.plan(600.0, null);
        });

        assertThat(Refusals.of(routerTable).field()).isEqualTo("/plan/depth");
        assertThat(StandBuilder.build(Draft.of(routerTable, draft -> draft.plan(600, 500)))
                        .machine())
                .isEmpty();
    }

    @Test
    void refusesAPlanThatWouldFollowToNothing() {
        var refusal = Refusals.of(TopDesigns.press(draft -> {
            draft.plan = TopDesigns.plan(null, 500.0);
            draft.place = TopDesigns.place(0, -200.0, -150.0, null, null);
        }));

        assertThat(refusal.field()).isEqualTo("/place/margins");
        assertThat(refusal).hasMessageContaining("A plan -50 mm wide is too small");
    }

    private static MachineLayout machine(int turn, Double left, Double right, Double front, Double back) {
        var press = TopDesigns.press(draft -> {
            draft.place = TopDesigns.place(turn, left, right, front, back);
            draft.machine = Draft.OfMachine.of(TopDesigns.PRESS, machine -> machine.mounting = Optional.empty());
        });
        return StandBuilder.build(press).machine().orElseThrow();
    }

    private static double[] seen(Box3 box) {
        return new double[] {
            box.min().x(), box.min().y(), box.max().x(), box.max().y()
        };
    }
}
