package org.standwright.packet.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.Cut.Purpose;
import org.standwright.sheet.Cut.Tool;
import org.standwright.sheet.PlacedPiece;

/** Limits: common practice, no source. */
class GuideTest {
    private static final int MM = 3200;

    @Test
    void aCrosscutOfAStripIsNotPushedAlongTheFenceEndOn() {
        assertThat(Guide.of(crosscut(400, 600))).isEqualTo(Guide.SLED_AND_STOP);
        assertThat(Guide.of(crosscut(600, 400))).isEqualTo(Guide.FENCE);
        assertThat(Guide.of(crosscut(299, 100))).isEqualTo(Guide.SLED_AND_STOP);
        assertThat(Guide.of(crosscut(300, 100))).isEqualTo(Guide.FENCE);
    }

    @Test
    void aRipIsPushedAlongTheFenceUnlessItIsShort() {
        assertThat(Guide.of(rip(149, 50))).isEqualTo(Guide.SLED_AND_STOP);
        assertThat(Guide.of(rip(150, 50))).isEqualTo(Guide.FENCE);
        assertThat(Guide.of(rip(250, 280))).isEqualTo(Guide.SLED_AND_STOP);
    }

    @Test
    void aHandHeldSawRunsAlongAStraightedge() {
        var cut = new Cut(
                1, Direction.RIP, new Area(0, 0, MM, MM), Tool.BREAK_DOWN_SAW, Purpose.DIVIDE, Edge.Y0, 600 * MM);
        assertThat(Guide.of(cut)).isEqualTo(Guide.STRAIGHTEDGE);
    }

    @Test
    void whatLiesBeyondTheKerfIsARest() {
        var cut = crosscut(400, 600);
        assertThat(SawWords.isRest(cut, piece(0, 600))).isFalse();
        assertThat(SawWords.isRest(cut, piece(604, 300))).isTrue();
        var fromTheRight = new Cut(1, Direction.CROSSCUT, cut.kerf(), Tool.SAW, Purpose.DIVIDE, Edge.X1, 300 * MM);
        assertThat(SawWords.isRest(fromTheRight, piece(0, 600))).isTrue();
        assertThat(SawWords.isRest(fromTheRight, piece(604, 300))).isFalse();
    }

    private static PlacedPiece piece(int x, int length) {
        return new PlacedPiece("A", new Area(x * MM, 0, length * MM, 400 * MM), false);
    }

    private static Cut crosscut(int along, int setting) {
        var kerf = new Area(setting * MM, 0, 4 * MM, along * MM);
        return new Cut(1, Direction.CROSSCUT, kerf, Tool.SAW, Purpose.DIVIDE, Edge.X0, setting * MM);
    }

    private static Cut rip(int along, int setting) {
        var kerf = new Area(0, setting * MM, along * MM, 4 * MM);
        return new Cut(1, Direction.RIP, kerf, Tool.SAW, Purpose.DIVIDE, Edge.Y0, setting * MM);
    }
}
