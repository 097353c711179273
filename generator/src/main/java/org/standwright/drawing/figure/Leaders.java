package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;

/** Words that found no room where they belong: beside or above the board, each with a thin line to its place. */
final class Leaders {
    private static final double SIZE = 2.2;
    private static final double AWAY = 4;
    private static final double APART = 0.6;
    private static final int MOST = 60;

    private final Rect board;
    private final TextMeasure measure;
    private Lettering taken;
    private final List<Shape> shapes = new ArrayList<>();

    /** @param drawn whose letters stay free */
    Leaders(Rect board, List<Shape> drawn, TextMeasure measure) {
        this.board = board;
        this.measure = measure;
        this.taken = Lettering.of(drawn, measure);
    }

    List<Shape> shapes() {
        return List.copyOf(shapes);
    }

    /** Beside the board or above it, whichever is nearer, as near to the place as others leave it. */
    void add(String words, Point place) {
        boolean beside = board.x1() - place.x() <= board.y1() - place.y();
        var text = IntStream.range(0, MOST)
                .mapToObj(i -> beside ? beside(words, place.y(), step(i)) : above(words, place.x(), step(i)))
                .filter(this::isFree)
                .findFirst()
                .orElseGet(() -> beyondAll(words));
        var box = measure.box(text);
        var end = beside
                ? new Point(box.x0() - APART / 2, (box.y0() + box.y1()) / 2)
                : new Point((box.x0() + box.x1()) / 2, box.y0() - APART / 2);
        shapes.add(new Line(place, end, Pen.DIMENSION));
        shapes.add(text);
        taken = taken.and(text, measure);
    }

    /** 0, then in turn one up and one down, two up … */
    private static int step(int i) {
        return i % 2 == 0 ? -i / 2 : (i + 1) / 2;
    }

    private Text beside(String words, double y, int step) {
        double baseline = y - measure.above(SIZE) / 2 + step * measure.pitch(SIZE);
        return Text.level(words, new Point(board.x1() + AWAY, baseline), SIZE, Text.Anchor.START);
    }

    private Text above(String words, double x, int step) {
        double pitch = measure.width(words, SIZE, Weight.REGULAR) + 2 * APART;
        return Text.level(words, new Point(x + step * pitch, board.y1() + AWAY), SIZE, Text.Anchor.MIDDLE);
    }

    private boolean isFree(Text text) {
        return taken.leavesFree(grown(measure.box(text)));
    }

    /** To the right of everything. */
    private Text beyondAll(String words) {
        double x = Stream.concat(taken.texts().stream().map(Lettering.Placed::box), Stream.of(board))
                .mapToDouble(Rect::x1)
                .max()
                .orElseThrow();
        return Text.level(words, new Point(x + AWAY, board.y1()), Letters.SMALLEST, Text.Anchor.START);
    }

    private static Rect grown(Rect box) {
        return new Rect(box.x0() - APART, box.y0(), box.x1() + APART, box.y1());
    }
}
