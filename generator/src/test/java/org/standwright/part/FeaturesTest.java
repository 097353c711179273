package org.standwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

class FeaturesTest {
    private static final Part BOARD =
            Part.blank("side", new Material("plywood", 18, 680, Grain.ALONG_LENGTH), 600, 400);

    @Test
    void aPocketMayReachTheEdgesOfItsBlank() {
        var notch = Pocket.through(new Rect(0, 150, 30, 400), 10, "finger notch");

        assertThat(BOARD.with(notch).features()).containsExactly(notch);
    }

    @Test
    void aPocketMayBeAsRoundAsItIsNarrow() {
        assertThat(Pocket.blind(Face.SHOW, new Rect(10, 10, 110, 50), 20, 9, "slot")
                        .radius())
                .isEqualTo(20);
        assertThatThrownBy(() -> Pocket.blind(Face.SHOW, new Rect(10, 10, 110, 50), 20.5, 9, "slot"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("corner radius of 'slot' is 20.500 mm, but on its side of 40.000 mm it can be at most"
                        + " 20.000 mm.");
    }

    @Test
    void aPocketStaysWithinItsBlank() {
        assertThatThrownBy(() -> BOARD.with(Pocket.through(new Rect(550, 100, 601, 200), 10, "cable")))
                .hasMessage("cable of 'side' reaches from (550.000, 100.000) to (601.000, 200.000) mm, outside its"
                        + " blank of 600.000 x 400.000 mm.");
        assertThatThrownBy(
                        () -> BOARD.with(Pocket.blind(Face.BENCH, new Rect(50, 100, 90, 200), 10, 18, "motor plate")))
                .hasMessage("motor plate of 'side' is 18.000 mm deep in a board of 18.000 mm; it must stay shallower"
                        + " or go right through.");
    }

    @Test
    void anEdgeHoleCoversItsDepthFromItsEdge() {
        assertThat(hole(Edge.X0, 100, 40).area(600, 400)).isEqualTo(new Rect(0, 98, 40, 102));
        assertThat(hole(Edge.X1, 100, 40).area(600, 400)).isEqualTo(new Rect(560, 98, 600, 102));
        assertThat(hole(Edge.Y0, 100, 40).area(600, 400)).isEqualTo(new Rect(98, 0, 102, 40));
        assertThat(hole(Edge.Y1, 100, 40).area(600, 400)).isEqualTo(new Rect(98, 360, 102, 400));
    }

    @Test
    void anEdgeHoleStaysWithinTheThickness() {
        assertThat(BOARD.with(new EdgeHole(Edge.Y1, 100, 2, 4, 40, "dowel")).features())
                .hasSize(1);
        assertThatThrownBy(() -> BOARD.with(new EdgeHole(Edge.Y1, 100, 16.5, 4, 40, "dowel")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("dowel of 'side' reaches from z 14.500 to 18.500 mm, out of its board of 18.000 mm.");
    }

    @Test
    void anEdgeHoleGoesNoFurtherThanItsBoardAndStaysOnItsEdge() {
        assertThatThrownBy(() -> BOARD.with(hole(Edge.Y0, 100, 401)))
                .hasMessage("pilot of 'side' is 401.000 mm deep in a board that reaches 400.000 mm that way; it can"
                        + " be no deeper.");
        assertThatThrownBy(() -> BOARD.with(hole(Edge.X0, 399, 40)))
                .hasMessage("pilot of 'side' reaches from (0.000, 397.000) to (40.000, 401.000) mm, outside its blank"
                        + " of 600.000 x 400.000 mm.");
        assertThat(BOARD.with(hole(Edge.X0, 100, 400)).features()).hasSize(1);
        assertThat(BOARD.with(hole(Edge.Y0, 100, 400)).features()).hasSize(1);
    }

    @Test
    void aBevelTakesAStripAlongItsEdge() {
        // tan 45° is 1
        assertThat(new Bevel(Edge.X0, Face.SHOW, 45, 18).setback()).isCloseTo(18, within(1e-12));
        // tan 60° is √3
        assertThat(new Bevel(Edge.Y1, Face.BENCH, 60, 10).setback()).isCloseTo(10 * Math.sqrt(3), within(1e-12));
        var strip = new Bevel(Edge.Y1, Face.SHOW, 45, 5).area(600, 400);
        assertThat(strip.y0()).isCloseTo(395, within(1e-12));
        assertThat(strip.width()).isEqualTo(600);
    }

    @Test
    void aBevelStaysWithinItsBoard() {
        // 18 tan 89° = 1031.219
        assertThatThrownBy(() -> BOARD.with(new Bevel(Edge.X0, Face.SHOW, 89, 18)))
                .hasMessage("bevel of 'side' reaches from (0.000, 0.000) to (1031.219, 400.000) mm, outside its blank"
                        + " of 600.000 x 400.000 mm.");
        assertThatThrownBy(() -> BOARD.with(new Bevel(Edge.X0, Face.SHOW, 45, 18.5)))
                .hasMessage("bevel of 'side' is 18.500 mm deep in a board of 18.000 mm; it can be no deeper.");
        assertThat(BOARD.with(new Bevel(Edge.X0, Face.SHOW, 45, 18)).features()).hasSize(1);
    }

    @Test
    void aBevelLeansBetweenSquareAndFlat() {
        assertThatThrownBy(() -> new Bevel(Edge.X0, Face.SHOW, 90, 18))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("tilt of a bevel is 90.0°, but must lie between 0 and 90.");
        assertThatThrownBy(() -> new Bevel(Edge.X0, Face.SHOW, 0, 18))
                .hasMessage("tilt of a bevel is 0.0°, but must lie between 0 and 90.");
    }

    @Test
    void aContourStaysWithinItsBlank() {
        assertThatThrownBy(() -> BOARD.with(bracket(601)))
                .hasMessage("bracket of 'side' reaches from (0.000, 0.000) to (601.000, 400.000) mm, outside its"
                        + " blank of 600.000 x 400.000 mm.");
        assertThat(BOARD.with(bracket(600)).contour()).contains(bracket(600));
    }

    @Test
    void aBoardHasOneContour() {
        assertThat(BOARD.contour()).isEmpty();
        assertThatThrownBy(() -> BOARD.with(bracket(600), bracket(500)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'side' has two contours; cut it to one outline.");
    }

    @Test
    void aRecessIsWiderThanItsHole() {
        assertThatThrownBy(() -> Hole.through(100, 100, 9, "bolt").with(new Recess.Counterbore(9, 5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("recess of 'bolt' is 9.000 mm wide, but must be wider than its hole of 9.000 mm.");
    }

    @Test
    void aRecessIsShallowerThanItsHole() {
        assertThatThrownBy(() -> BOARD.with(Hole.through(100, 100, 9, "bolt").with(new Recess.Counterbore(26, 18))))
                .hasMessage("recess of bolt of 'side' is 18.000 mm deep in a hole of 18.000 mm; it must stay"
                        + " shallower.");
        // (20 - 5) / 2 = 7.5 deep at 90°
        assertThatThrownBy(() -> BOARD.with(
                        Hole.blind(Face.SHOW, 100, 100, 5, 7, "screw").with(new Recess.Countersink(20, 90))))
                .hasMessage("recess of screw of 'side' is 7.500 mm deep in a hole of 7.000 mm; it must stay"
                        + " shallower.");
    }

    @Test
    void aRecessStaysWithinItsBlank() {
        assertThatThrownBy(() -> BOARD.with(Hole.through(10, 100, 9, "bolt").with(new Recess.Counterbore(26, 9))))
                .hasMessage("bolt of 'side' reaches from (-3.000, 87.000) to (23.000, 113.000) mm, outside its blank"
                        + " of 600.000 x 400.000 mm.");
    }

    @ParameterizedTest
    // half the difference of the diameters over the tangent of half the angle: tan 45° = 1, tan 41° = 0.869287,
    // tan 60° = 1.732051
    @CsvSource({"10, 90, 5, 2.5", "10, 82, 5, 2.875921", "10, 120, 5, 1.443376", "8.4, 90, 4.2, 2.1"})
    void aCountersinkIsAsDeepAsItsAngleMakesIt(double diameter, double angle, double bore, double depth) {
        assertThat(new Recess.Countersink(diameter, angle).depth(bore)).isCloseTo(depth, within(1e-6));
    }

    @Test
    void aCounterboreIsAsDeepAsItSays() {
        assertThat(new Recess.Counterbore(26, 9).depth(8)).isEqualTo(9);
    }

    @Test
    void aCountersinkHasAnAngle() {
        assertThatThrownBy(() -> new Recess.Countersink(10, 180))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("angle of a countersink is 180.0°, but must lie between 0 and 180.");
    }

    private static Contour bracket(double length) {
        return new Contour(new Outline(List.of(new Vec2(0, 0), new Vec2(length, 0), new Vec2(0, 400))), "bracket");
    }

    private static EdgeHole hole(Edge edge, double along, double depth) {
        return new EdgeHole(edge, along, 9, 4, depth, "pilot");
    }
}
