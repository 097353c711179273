package org.standwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.standwright.geom.Rect;

/** Every text of a drawing with the box that it fills, groups resolved, in drawing order. */
public record Lettering(List<Placed> texts) {
    /** One text at its place on the paper. */
    public record Placed(String words, Rect box) {}

    public Lettering {
        texts = List.copyOf(texts);
    }

    public static Lettering of(List<Shape> shapes, TextMeasure measure) {
        var found = new ArrayList<Placed>();
        shapes.forEach(shape -> shape.accept(new Collect(new Point(0, 0), measure, found)));
        return new Lettering(found);
    }

    /** These texts and one more, which lies in no group. */
    public Lettering and(Text text, TextMeasure measure) {
        var more = new ArrayList<>(texts);
        more.add(new Placed(text.words(), measure.box(text)));
        return new Lettering(more);
    }

    /** Whether {@code box} touches none of the texts. */
    public boolean leavesFree(Rect box) {
        return texts.stream().noneMatch(text -> overlap(text.box(), box));
    }

    /** Whether two rectangles share an area. */
    public static boolean overlap(Rect a, Rect b) {
        return a.x0() < b.x1() && b.x0() < a.x1() && a.y0() < b.y1() && b.y0() < a.y1();
    }

    private record Collect(Point origin, TextMeasure measure, List<Placed> found) implements ShapeVisitor<Void> {
        @Override
        public Void line(Line line) {
            return null;
        }

        @Override
        public Void arc(Arc arc) {
            return null;
        }

        @Override
        public Void polygon(Polygon polygon) {
            return null;
        }

        @Override
        public Void text(Text text) {
            var box = measure.box(text);
            found.add(new Placed(
                    text.words(),
                    new Rect(
                            box.x0() + origin.x(),
                            box.y0() + origin.y(),
                            box.x1() + origin.x(),
                            box.y1() + origin.y())));
            return null;
        }

        @Override
        public Void group(Group group) {
            var inner = new Collect(origin.plus(group.shift()), measure, found);
            group.shapes().forEach(shape -> shape.accept(inner));
            return null;
        }
    }
}
