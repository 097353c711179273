package org.standwright.router.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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

/** Room for small letters near what they belong to, within a part and off every line. */
final class Room {
    /** Places tried are so far apart and within so many steps, mm. */
    private static final double STEP = 2;

    private static final int STEPS = 6;

    private final TextMeasure measure = TextMeasure.shipped();
    private final Geometry area;
    private final List<Geometry> taken;

    Room(Outline outline, Stream<Mark> marks) {
        area = Flat.of(outline);
        taken = new ArrayList<>(marks.map(mark -> mark.accept(new MarkArea()))
                .map(shape -> shape.getDimension() == 2 ? shape.getBoundary() : shape)
                .filter(line -> !line.isEmpty())
                .toList());
    }

    /** Words as near to a point as there is room; none if there is none near. */
    Optional<Mark.Words> near(String words, Vec2 to, double size) {
        double wide = measure.width(words, size, Weight.REGULAR);
        return IntStream.rangeClosed(-STEPS, STEPS)
                .boxed()
                .flatMap(i -> IntStream.rangeClosed(-STEPS, STEPS).mapToObj(j -> new Vec2(i * STEP, j * STEP)))
                .sorted(Comparator.comparingDouble(Vec2::length))
                .map(shift -> to.plus(shift).minus(new Vec2(wide / 2, size / 3)))
                .filter(at -> take(at, wide, size))
                .findFirst()
                .map(at -> new Mark.Words(words, at, size));
    }

    private boolean take(Vec2 at, double wide, double size) {
        var box = Flat.of(Outline.of(new Rect(
                at.x() - 0.5,
                at.y() - measure.below(size) - 0.3,
                at.x() + wide + 0.5,
                at.y() + measure.above(size) + 0.3)));
        if (!area.covers(box) || taken.stream().anyMatch(box::intersects)) {
            return false;
        }
        return taken.add(box);
    }
}
