package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Rect;
import org.standwright.sheet.Cut;

/** Numbers of cuts, each on its own line where no other letters stand. */
final class CutNumbers {
    private static final double SIZE = 2.0;
    private static final double CLEAR = 0.35;
    private static final int PLACES = 41;

    private CutNumbers() {}

    /**
     * The numbers that find a free place on their lines, each on a white ground.
     *
     * @param kerf where a cut lies on paper
     */
    static List<Shape> free(List<Cut> cuts, Function<Cut, Rect> kerf, List<Shape> drawn, TextMeasure measure) {
        var taken = Lettering.of(drawn, measure);
        var numbers = new ArrayList<Shape>();
        for (var cut : cuts) {
            var others = cuts.stream().filter(other -> other != cut).map(kerf).toList();
            var number = place(cut, kerf.apply(cut), others, taken, measure);
            if (number.isPresent()) {
                numbers.add(Polygon.area(ground(number.get(), measure), Fill.WHITE));
                numbers.add(number.get());
                taken = taken.and(number.get(), measure);
            }
        }
        return numbers;
    }

    /** From the middle of the line outward; off other cuts if there is such a place. */
    private static Optional<Text> place(Cut cut, Rect kerf, List<Rect> others, Lettering taken, TextMeasure measure) {
        var free = IntStream.range(0, PLACES)
                .mapToObj(i -> number(cut, kerf, part(i), measure))
                .filter(text -> taken.leavesFree(ground(text, measure)))
                .toList();
        return free.stream()
                .filter(text -> others.stream().noneMatch(other -> Lettering.overlap(other, ground(text, measure))))
                .findFirst()
                .or(() -> free.stream().findFirst());
    }

    /** 1/2, then in turn below and above it, up to the ends. */
    private static double part(int i) {
        int steps = (i + 1) / 2;
        return 0.5 + (i % 2 == 0 ? steps : -steps) * (1.0 / (PLACES + 1));
    }

    private static Text number(Cut cut, Rect kerf, double part, TextMeasure measure) {
        boolean rip = cut.direction() == Cut.Direction.RIP;
        double x = kerf.x0() + (rip ? part : 0.5) * kerf.width();
        double y = kerf.y0() + (rip ? 0.5 : part) * kerf.height();
        var at = new Point(x, y - measure.above(SIZE) / 2);
        return Text.level(String.valueOf(cut.number()), at, SIZE, Text.Anchor.MIDDLE);
    }

    private static Rect ground(Text text, TextMeasure measure) {
        var box = measure.box(text);
        return new Rect(box.x0() - CLEAR, box.y0(), box.x1() + CLEAR, box.y1() + CLEAR);
    }
}
