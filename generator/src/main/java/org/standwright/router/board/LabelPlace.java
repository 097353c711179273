package org.standwright.router.board;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.router.machining.Flat;
import org.standwright.router.machining.MarkArea;

/** Where lettering stands in an area without covering what is drawn there. */
public final class LabelPlace {
    /** Room round lettering, mm. */
    private static final double AIR = 1.5;

    /** Other typefaces than ours are wider by as much; programs that read plots have their own. */
    private static final double WIDER = 1.2;

    private static final int TRIES = 24;
    private final TextMeasure measure = TextMeasure.shipped();
    private final Geometry area;
    private final List<Geometry> taken;
    private final Rect bounds;

    /**
     * Room for lettering.
     *
     * @param outline that it stays within
     * @param marks that it keeps off
     */
    public LabelPlace(Outline outline, Stream<Mark> marks) {
        area = Flat.of(outline);
        bounds = outline.bounds();
        taken = marks.map(mark -> mark.accept(new MarkArea()))
                .filter(mark -> !mark.isEmpty())
                .toList();
    }

    /** The words as large as they can be of some sizes, mm, nearest to the middle; none if they fit in no size. */
    public Optional<Mark.Words> of(String words, double... sizes) {
        for (double size : sizes) {
            var place = place(words, size);
            if (place.isPresent()) {
                return place.map(at -> new Mark.Words(words, at, size));
            }
        }
        return Optional.empty();
    }

    private Optional<Vec2> place(String words, double size) {
        double wide = WIDER * measure.width(words, size, Weight.REGULAR);
        double high = measure.above(size) + measure.below(size);
        double spareX = bounds.width() - wide - 2 * AIR;
        double spareY = bounds.height() - high - 2 * AIR;
        if (spareX < 0 || spareY < 0) {
            return Optional.empty();
        }
        return Stream.iterate(0, i -> i + 1)
                .limit((TRIES + 1) * (TRIES + 1))
                .map(i -> new Vec2(i % (TRIES + 1), i / (TRIES + 1)))
                .sorted(Comparator.comparingDouble(at -> Math.hypot(at.x() - TRIES / 2.0, at.y() - TRIES / 2.0)))
                .map(at -> new Vec2(
                        bounds.x0() + AIR + spareX * at.x() / TRIES,
                        bounds.y0() + AIR + measure.below(size) + spareY * at.y() / TRIES))
                .filter(at -> isFree(at, wide, size))
                .findFirst();
    }

    private boolean isFree(Vec2 at, double wide, double size) {
        var box = Flat.of(Outline.of(new Rect(
                at.x() - AIR,
                at.y() - measure.below(size) - AIR,
                at.x() + wide + AIR,
                at.y() + measure.above(size) + AIR)));
        return area.covers(box) && taken.stream().noneMatch(box::intersects);
    }
}
