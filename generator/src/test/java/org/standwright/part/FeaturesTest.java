package org.standwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.standwright.geom.Rect;

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

    private static EdgeHole hole(Edge edge, double along, double depth) {
        return new EdgeHole(edge, along, 9, 4, depth, "pilot");
    }
}
