package org.standwright.drawing.figure;

import java.util.List;
import java.util.function.Function;
import org.standwright.geom.Rect;

/** How many times smaller than life something is drawn. */
public record Scale(int times) {
    private static final List<Scale> SERIES = List.of(5, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100).stream()
            .map(Scale::new)
            .toList();

    /** Width and height of a thing, mm. */
    public record Size(double width, double height) {}

    /**
     * A figure at the largest scale of the series at which one fits; the smallest there is when none does.
     *
     * @param life size of the thing alone, mm: scales at which it cannot fit are not drawn
     * @param draw the ways to draw it at a scale, the best first
     */
    public static Figure largest(Size life, double width, double height, Function<Scale, List<Figure>> draw) {
        return largest(life, width, height, draw, Function.identity());
    }

    /** The same for what knows more of itself than its figure. */
    static <F> F largest(
            Size life, double width, double height, Function<Scale, List<F>> draw, Function<F, Figure> figure) {
        return SERIES.stream()
                .filter(scale -> scale.paper(life.width) <= width && scale.paper(life.height) <= height)
                .flatMap(scale -> draw.apply(scale).stream())
                .filter(drawn -> figure.apply(drawn).width() <= width
                        && figure.apply(drawn).height() <= height)
                .findFirst()
                .orElseGet(() -> draw.apply(SERIES.get(SERIES.size() - 1)).get(0));
    }

    public double paper(double mm) {
        return mm / times;
    }

    public Rect paper(Rect rect) {
        return new Rect(paper(rect.x0()), paper(rect.y0()), paper(rect.x1()), paper(rect.y1()));
    }

    @Override
    public String toString() {
        return "1:" + times;
    }
}
