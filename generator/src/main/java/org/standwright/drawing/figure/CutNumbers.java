package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Rect;
import org.standwright.sheet.Cut;

/**
 * Numbers of cuts, each on a white ground on its own line where no other letters stand.
 *
 * @param homeless cuts whose number found no place on their lines
 */
record CutNumbers(List<Shape> shapes, List<Cut> homeless) {
    private static final List<Double> SIZES = List.of(2.2, Letters.SMALLEST);
    private static final double CLEAR = 0.35;
    private static final int PLACES = 81;

    CutNumbers {
        shapes = List.copyOf(shapes);
        homeless = List.copyOf(homeless);
    }

    /**
     * Short lines choose first: long ones find a place anyway.
     *
     * @param kerf where a cut lies on paper
     */
    static CutNumbers on(List<Cut> cuts, Function<Cut, Rect> kerf, List<Shape> drawn, TextMeasure measure) {
        var taken = Lettering.of(drawn, measure);
        var numbers = new ArrayList<Shape>();
        var homeless = new ArrayList<Cut>();
        for (var cut : shortestFirst(cuts)) {
            var others = cuts.stream().filter(other -> other != cut).map(kerf).toList();
            var number = place(cut, kerf.apply(cut), others, taken, measure);
            if (number.isPresent()) {
                numbers.add(Polygon.area(ground(number.get(), measure), Fill.WHITE));
                numbers.add(number.get());
                taken = taken.and(number.get(), measure);
            } else {
                homeless.add(cut);
            }
        }
        return new CutNumbers(numbers, homeless);
    }

    private static List<Cut> shortestFirst(List<Cut> cuts) {
        return cuts.stream()
                .sorted(Comparator.comparingInt(
                        cut -> isRip(cut) ? cut.kerf().length() : cut.kerf().width()))
                .toList();
    }

    private static boolean isRip(Cut cut) {
        return cut.direction() == Cut.Direction.RIP;
    }

    /** From the middle of the line outward; off other cuts if there is such a place. */
    private static Optional<Text> place(Cut cut, Rect kerf, List<Rect> others, Lettering taken, TextMeasure measure) {
        var free = SIZES.stream()
                .flatMap(size -> IntStream.range(0, PLACES).mapToObj(i -> number(cut, kerf, part(i), size, measure)))
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

    private static Text number(Cut cut, Rect kerf, double part, double size, TextMeasure measure) {
        double x = kerf.x0() + (isRip(cut) ? part : 0.5) * kerf.width();
        double y = kerf.y0() + (isRip(cut) ? 0.5 : part) * kerf.height();
        var at = new Point(x, y - measure.above(size) / 2);
        return Text.level(String.valueOf(cut.number()), at, size, Text.Anchor.MIDDLE);
    }

    private static Rect ground(Text text, TextMeasure measure) {
        var box = measure.box(text);
        return new Rect(box.x0() - CLEAR, box.y0(), box.x1() + CLEAR, box.y1() + CLEAR);
    }
}
