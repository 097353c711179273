package org.standwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.standwright.geom.Rect;
import org.standwright.sheet.Cut;

/** Numbers of cuts, each on its own line where no other letters stand. */
final class CutNumbers {
    private static final double SIZE = 2.0;
    private static final double CLEAR = 0.35;
    private static final int PLACES = 40;

    private CutNumbers() {}

    /** The numbers that find a free place on their lines, each on a white ground. */
    static List<Shape> free(List<Cut> cuts, Function<Cut, Rect> kerf, List<Shape> drawn, TextMeasure measure) {
        var all = new ArrayList<>(drawn);
        var numbers = new ArrayList<Shape>();
        for (var cut : cuts) {
            place(cut, kerf.apply(cut), Lettering.of(all, measure), measure).ifPresent(text -> {
                var ground = Polygon.area(ground(text, measure), Fill.WHITE);
                numbers.addAll(List.of(ground, text));
                all.add(text);
            });
        }
        return numbers;
    }

    private static Optional<Text> place(Cut cut, Rect kerf, Lettering taken, TextMeasure measure) {
        for (int i = 1; i < PLACES; i++) {
            double part = (double) i / PLACES;
            double x = cut.direction() == Cut.Direction.RIP
                    ? kerf.x0() + part * kerf.width()
                    : (kerf.x0() + kerf.x1()) / 2;
            double y = cut.direction() == Cut.Direction.RIP
                    ? (kerf.y0() + kerf.y1()) / 2
                    : kerf.y0() + part * kerf.height();
            var at = new Point(x, y - measure.above(SIZE) / 2);
            var text = Text.level(String.valueOf(cut.number()), at, SIZE, Text.Anchor.MIDDLE);
            if (taken.leavesFree(ground(text, measure))) {
                return Optional.of(text);
            }
        }
        return Optional.empty();
    }

    private static Rect ground(Text text, TextMeasure measure) {
        var box = measure.box(text);
        return new Rect(box.x0() - CLEAR, box.y0(), box.x1() + CLEAR, box.y1() + CLEAR);
    }
}
