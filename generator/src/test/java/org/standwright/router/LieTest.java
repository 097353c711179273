package org.standwright.router;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;

class LieTest {
    private static final Part PANEL = Part.blank("panel", new Material("birch 18", 18, 680, Grain.NONE), 300, 200);

    /** Worked by hand: the corner (300, 0) of a panel. */
    @ParameterizedTest
    @CsvSource({
        "false, 0, 310, 20", "false, 1, 10, 320", "false, 2, -290, 20", "false, 3, 10, -280",
        "true, 0, 310, 20", "true, 1, 10, 320", "true, 2, -290, 20", "true, 3, 10, -280"
    })
    void turnsThenShifts(boolean overturned, int quarters, double x, double y) {
        assertThat(new Lie(overturned, quarters, new Vec2(10, 20)).apply(new Vec2(300, 0)))
                .isEqualTo(new Vec2(x, y));
    }

    @Test
    void turnsOverAboutThePartsLongAxis() {
        assertThat(new Lie(true, 0, Vec2.ZERO).apply(new Vec2(30, 5))).isEqualTo(new Vec2(30, -5));
        assertThat(new Lie(true, 1, Vec2.ZERO).apply(new Vec2(30, 5))).isEqualTo(new Vec2(5, 30));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 4})
    void refusesOtherTurns(int quarters) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Lie(false, quarters, Vec2.ZERO))
                .withMessageContaining("0 to 3");
    }

    @Test
    void putsUpTheFaceThatIsWorkedOn() {
        var groove = Channel.along(Face.BENCH, 20, 26, 300, 6);
        var through = Hole.through(50, 50, 8, "bolt");
        var dado = Channel.across(Face.SHOW, 20, 38, 200, 6);

        assertThat(FaceUp.of(PANEL.with(through))).isEqualTo(Face.SHOW);
        assertThat(FaceUp.of(PANEL.with(through, groove))).isEqualTo(Face.BENCH);
        assertThat(FaceUp.of(PANEL.with(groove, dado))).isEqualTo(Face.SHOW);
        assertThat(FaceUp.worked(PANEL.with(groove, dado))).containsExactlyInAnyOrder(Face.BENCH, Face.SHOW);
        assertThat(FaceUp.worked(PANEL.with(through))).isEmpty();
    }

    @Test
    void aSheetIsTwoSidedWhereOneOfItsPartsIs() {
        var groove = Channel.along(Face.BENCH, 20, 26, 300, 6);
        var hole = new Hole(Face.SHOW, 90, 90, 5, OptionalDouble.of(10), Optional.empty(), "pin");

        assertThat(sheet(PANEL.with(groove), PANEL.with(hole)).isTwoSided()).isFalse();
        assertThat(sheet(PANEL.with(groove), PANEL.with(groove, hole)).isTwoSided())
                .isTrue();
    }

    @Test
    void cutsToTheBlankBeforeItsEdgesAreCovered() {
        var tape = Optional.of(new Banding("tape", 2));

        assertThat(CutOutline.of(PANEL.banded(Bands.around(tape))).bounds()).isEqualTo(new Rect(2, 2, 298, 198));
        assertThat(CutOutline.of(PANEL.cutOver(5)).bounds()).isEqualTo(new Rect(-5, -5, 305, 205));
    }

    @Test
    void cutsToTheContourWhereItIsInsideTheBlank() {
        var slope = new Outline(List.of(new Vec2(0, 0), new Vec2(300, 0), new Vec2(300, 80), new Vec2(0, 200)));
        var sloped = PANEL.with(new Contour(slope, "sloped top"));
        var tape = Optional.of(new Banding("tape", 2));

        assertThat(CutOutline.of(sloped)).isEqualTo(slope);
        assertThat(CutOutline.of(sloped.cutOver(5)).isRectangle()).isTrue();
        assertThat(CutOutline.of(sloped.banded(Bands.atY0(tape))).area()).isCloseTo(slope.area() - 600, within(1e-6));
    }

    private static RoutedSheet sheet(Part... parts) {
        var board = StockSheet.bought(new SheetGood(PANEL.material(), 2440, 1220, Optional.empty(), Optional.empty()));
        return new RoutedSheet(
                board,
                Stream.of(parts)
                        .map(part -> new RoutedPiece("A", part, new Lie(false, 0, Vec2.ZERO)))
                        .toList());
    }
}
