package org.standwright.viewer.hand.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.Sample;
import org.standwright.viewer.hand.change.Handle;

class HandlesTest {
    private static final double EXACT = 1e-5;

    @ParameterizedTest
    @MethodSource("org.standwright.viewer.hand.Sample#stands")
    void movesEveryGapAndPartitionThereAndBack(String name) {
        var before = model(Sample.stand(name));
        for (var handle : before.handles()) {
            var refused = new ArrayList<String>();
            for (double by : List.of(10.0, -10.0)) {
                try {
                    thereAndBack(before, handle, by);
                } catch (ImpossibleDesignException refusal) {
                    refused.add(refusal.getMessage());
                }
            }
            assertThat(refused).as(handle.words()).hasSizeLessThan(2);
            // those of the presets that have no room to one side
            assertThat(refused).allMatch(why -> why.startsWith("Machine bolts") || why.startsWith("Cut-out"));
        }
    }

    private static void thereAndBack(FrontModel before, Handle handle, double by) {
        double step = before.stand().design().unit().tapeStep();
        var move = handle.dragged(by, by);
        var there = model(move.text());
        assertThat(shift(handle, there)).as(handle.words()).isCloseTo(by, within(step));
        assertOnlyNeighboursMoved(before, there, handle);
        assertThat(move.area())
                .satisfies(area -> close(area, same(handle, there).area()));

        var back = model(same(handle, there)
                .dragged(-shift(handle, there), -shift(handle, there))
                .text());

        var now = areas(back);
        areas(before)
                .forEach((key, area) -> assertThat(now.get(key)).as(key).satisfies(same -> close(same, area, step)));
    }

    private static double shift(Handle handle, FrontModel there) {
        var now = same(handle, there).area();
        return handle.way() == Handle.Way.UP_AND_DOWN
                ? now.y0() - handle.area().y0()
                : now.x0() - handle.area().x0();
    }

    /** Every edge of every front and opening stays, but those that lie at the handle. */
    private static void assertOnlyNeighboursMoved(FrontModel before, FrontModel there, Handle handle) {
        var now = areas(there);
        boolean level = handle.way() == Handle.Way.UP_AND_DOWN;
        areas(before).forEach((key, was) -> {
            var is = now.get(key);
            assertThat(is).as(key + " after moving " + handle.words()).isNotNull();
            if (level && handle.key().startsWith(bay(key) + "/gap")) {
                assertThat(is.x0()).as(key).isCloseTo(was.x0(), within(EXACT));
                edges(key, handle.area().y0(), handle.area().y1(), was.y0(), was.y1(), is.y0(), is.y1());
            } else if (level && !key.startsWith(bay(handle.key()))) {
                close(is, was);
            }
        });
    }

    private static String bay(String key) {
        return key.replaceAll("/(cell|gap|partition)/\\d+$", "");
    }

    private static void edges(
            String key, double from, double to, double wasLow, double wasHigh, double low, double high) {
        if (Math.abs(wasLow - to) > EXACT) {
            assertThat(low).as("lower edge of " + key).isCloseTo(wasLow, within(EXACT));
        }
        if (Math.abs(wasHigh - from) > EXACT) {
            assertThat(high).as("upper edge of " + key).isCloseTo(wasHigh, within(EXACT));
        }
    }

    private static void close(Rect is, Rect was) {
        close(is, was, EXACT);
    }

    private static void close(Rect is, Rect was, double by) {
        assertThat(new double[] {is.x0(), is.y0(), is.x1(), is.y1()})
                .containsExactly(new double[] {was.x0(), was.y0(), was.x1(), was.y1()}, within(by + EXACT));
    }

    private static Map<String, Rect> areas(FrontModel model) {
        var areas = new LinkedHashMap<String, Rect>();
        model.things().forEach(thing -> areas.put(thing.key(), thing.area()));
        return areas;
    }

    private static Handle same(Handle handle, FrontModel there) {
        return there.handles().stream()
                .filter(other -> other.key().equals(handle.key()))
                .findFirst()
                .orElseThrow();
    }

    static FrontModel model(String text) {
        return FrontModel.of(text, Sample.built(text));
    }
}
