package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Bend;
import org.standwright.geom.Loop;

/**
 * Where bridges hold a part: about one every 300 mm and three at least, four at a small part (references 9), on straight
 * sides, clear of corners by the bit, and not where something runs out past the edge.
 */
final class Tabs {
    static final int LEAST = 3;
    static final int LEAST_SMALL = 4;
    private static final double PITCH = 300;
    /** Places are tried so far apart, mm. */
    private static final double STEP = 4;

    private record Place(double along, Mark.Open line) {}

    private final double length;
    private final int wanted;
    private final List<Place> chosen = new ArrayList<>();

    Tabs(Ground ground, List<Operation> operations, double bit, double length, int least) {
        this.length = length;
        var outline = Loop.of(ground.outline());
        double around = outline.length();
        wanted = Math.max(least, (int) Math.round(around / PITCH));
        var possible = places(outline, bit, taken(operations, ground.area().getBoundary(), bit));
        for (int i = 0; i < wanted; i++) {
            double ideal = (i + 0.5) * around / wanted;
            possible.stream()
                    .filter(place -> chosen.stream()
                            .allMatch(other -> apart(place.along, other.along, around) >= length + 2 * bit))
                    .min((a, b) -> Double.compare(apart(a.along, ideal, around), apart(b.along, ideal, around)))
                    .ifPresent(chosen::add);
        }
    }

    List<Mark.Open> lines() {
        return chosen.stream().map(Place::line).toList();
    }

    /** What to do where there are too few. */
    Optional<String> remark() {
        return chosen.size() == wanted
                ? Optional.empty()
                : Optional.of("room for " + chosen.size() + " of " + wanted
                        + " tabs only: hold it down in another way, or make tabs shorter");
    }

    private List<Place> places(Loop outline, double bit, List<Geometry> taken) {
        var places = new ArrayList<Place>();
        double along = 0;
        double clear = bit + length / 2;
        for (var side : outline.sides()) {
            double reach = side.length();
            int steps = (int) Math.floor((reach - 2 * clear) / STEP);
            for (int i = 0; i <= steps; i++) {
                double at = reach / 2 + (i - steps / 2.0) * STEP;
                var line = line(side, at);
                var here = Flat.line(line.points().get(0), line.points().get(1));
                if (taken.stream().noneMatch(area -> area.isWithinDistance(here, bit))) {
                    places.add(new Place(along + at, line));
                }
            }
            along += reach;
        }
        return places;
    }

    private Mark.Open line(Bend side, double at) {
        double reach = side.length();
        return new Mark.Open(List.of(side.at((at - length / 2) / reach), side.at((at + length / 2) / reach)));
    }

    /** What is cut within reach of the edge. */
    private static List<Geometry> taken(List<Operation> operations, Geometry edge, double bit) {
        return operations.stream()
                .filter(operation -> operation.work().kind() != Kind.OUTLINE)
                .map(operation -> operation.mark().accept(new MarkArea()))
                .filter(area -> !area.isEmpty() && area.isWithinDistance(edge, bit))
                .toList();
    }

    private static double apart(double a, double b, double around) {
        double one = Math.abs(a - b);
        return Math.min(one, around - one);
    }
}
