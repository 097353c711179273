package org.standwright.viewer.hand.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.Sample;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Move;

class WallModelTest {
    private static final String CORNER = Sample.wall("corner-walls");

    private static WallModel model(String text) {
        return WallModel.of(text, Sample.builtWall(text));
    }

    private static Handle handle(WallModel model, String key) {
        return model.handles().stream()
                .filter(handle -> handle.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("org.standwright.viewer.hand.Sample#walls")
    void movesEveryHolderByARowAndAlong(String name) {
        var model = model(Sample.wall(name));
        var refused = new ArrayList<String>();
        int moved = 0;
        for (var handle : model.handles()) {
            if (!handle.key().startsWith("/holders/")) {
                continue;
            }
            for (var move :
                    new Move[] {handle.nudged(0, 1), handle.nudged(0, -1), handle.dragged(50, 0), handle.dragged(-50, 0)
                    }) {
                try {
                    arrives(handle, move);
                    moved++;
                } catch (ImpossibleDesignException refusal) {
                    refused.add(refusal.getMessage());
                }
            }
        }
        assertThat(moved).isGreaterThan(model.built().holders().size());
        assertThat(refused)
                .allMatch(why -> why.contains("cannot hang on row") && why.contains("nearest x")
                        || why.contains("No place on this row would do"));
    }

    @ParameterizedTest
    @MethodSource("org.standwright.viewer.hand.Sample#walls")
    void movesAndResizesEveryObstacle(String name) {
        var model = model(Sample.wall(name));
        for (var handle : model.handles()) {
            if (!handle.key().startsWith("/holders/")) {
                arrives(handle, handle.dragged(20, 20));
                arrives(handle, handle.dragged(-20, -20));
                assertThat(handle.dragged(0, 0).text()).isEqualTo(Sample.wall(name));
            }
        }
    }

    @Test
    void writesThePlaceOfAHolderThatWasFoundOneAndLeavesTheRest() {
        var moved = handle(model(CORNER), "/holders/3").nudged(0, 1);

        assertThat(moved.text()).contains("\"place\": { \"wall\": \"west\", \"row\": 5, \"x\": ");
        assertThat(moved.sizes().get(0)).startsWith("row 5, ");
        var back = model(moved.text()).deed(WallAction.PLACE_AGAIN, "/holders/3");
        assertThat(model(back.text().orElseThrow()).things())
                .isEqualTo(model(CORNER).things());
    }

    @Test
    void duplicatesUnderAFreeName() {
        var twice =
                model(CORNER).deed(WallAction.DUPLICATE, "/holders/0").text().orElseThrow();

        assertThat(Sample.builtWall(twice).design().holders().get(1).name()).isEqualTo("sander shelf 2");
        assertThat(model(twice).deed(WallAction.DUPLICATE, "/holders/0").text().orElseThrow())
                .contains("\"sander shelf 3\"");
    }

    @Test
    void removesWhatIsPicked() {
        var without = model(CORNER).deed(WallAction.REMOVE, "/walls/0/obstacles/1");

        assertThat(without.what()).isEqualTo("Remove outlet");
        assertThat(without.text().orElseThrow()).doesNotContain("outlet");
        assertThat(model(CORNER).deed(WallAction.REMOVE, "/walls/0").whyNot()).startsWith("Nothing is picked");
        assertThat(model(CORNER)
                        .deed(WallAction.PLACE_AGAIN, "/walls/0/obstacles/1")
                        .whyNot())
                .startsWith("Only for holders");
    }

    @Test
    void keepsObstaclesWithinTheWall() {
        var door = handle(model(CORNER), "/walls/1/obstacles/0");

        assertThat(door.dragged(10_000, 500).sizes()).containsExactly("2540 mm from the left");
        assertThat(door.way()).isEqualTo(Handle.Way.LEFT_AND_RIGHT);
    }

    private static void arrives(Handle handle, Move move) {
        assertThat(handle(model(move.text()), handle.key()).area())
                .as(handle.words())
                .satisfies(area -> close(area, move.area()));
    }

    private static void close(Rect is, Rect was) {
        assertThat(new double[] {is.x0(), is.y0(), is.x1(), is.y1()})
                .containsExactly(new double[] {was.x0(), was.y0(), was.x1(), was.y1()}, within(1e-5));
    }
}
