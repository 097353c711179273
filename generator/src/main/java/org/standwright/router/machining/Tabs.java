package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Bend;
import org.standwright.geom.Grid;
import org.standwright.geom.Loop;
import org.standwright.geom.Vec2;
import org.standwright.part.Face;

/**
 * Where bridges hold a part: about one every 300 mm and three at least, four at a small part (references 9), on straight
 * sides and on opposite edges, clear of corners by the bit, and only where the wood is whole from the lower face up to
 * the bridge's height: what is cut from above and stays over it does no harm.
 */
final class Tabs {
    static final int LEAST = 3;
    static final int LEAST_SMALL = 4;
    private static final double PITCH = 300;
    /** Places are tried so far apart, mm. */
    private static final double STEP = 4;
    /** Whole wood round a bridge, mm, or as much as the bit where that is less; our own choice. */
    private static final double FOOT = 8;
    /** Wood left over a bridge by what is cut from above, mm; our own choice. */
    private static final double OVER = 1;
    /** Edges face away from each other where the cosine between their outward normals is less. */
    private static final double OPPOSITE = -0.5;

    /** One place, and which way its edge faces. */
    private record Place(double along, Vec2 outwards, Mark.Open line) {}

    private final double length;
    private final double bit;
    private final double around;
    private final int wanted;
    private final int least;
    private final List<Place> possible;
    private final List<Place> chosen = new ArrayList<>();

    /**
     * Finds them.
     *
     * @param cuts all that is cut while the board lies as planned or before
     * @param up the face that is up when the outline is cut
     */
    Tabs(Ground ground, List<Operation> cuts, Router router, double thickness, Face up, int least) {
        var tabs = router.tabs().orElseThrow();
        this.length = tabs.length();
        this.bit = router.bit();
        this.least = least;
        var outline = Loop.of(ground.outline());
        around = outline.length();
        wanted = Math.max(least, (int) Math.round(around / PITCH));
        var weak = cuts.stream()
                .filter(cut -> weakens(cut, up, thickness - tabs.height() - OVER))
                .toList();
        possible = places(outline, taken(weak, ground.area().getBoundary(), Math.min(bit, FOOT)));
        spread();
        takeOppositeEdges();
    }

    /** Evenly round the outline, none nearer to another than half of their pitch. */
    private void spread() {
        double apart = Math.max(length + 2 * bit, around / wanted / 2);
        for (int i = 0; i < wanted; i++) {
            double ideal = (i + 0.5) * around / wanted;
            nearest(possible, ideal, apart).ifPresent(chosen::add);
        }
    }

    /** Where those lie on one edge or on neighbours, what is possible on an edge that faces the other way. */
    private void takeOppositeEdges() {
        if (isHeldBothWays()) {
            return;
        }
        for (var one : List.copyOf(chosen)) {
            var across =
                    possible.stream().filter(place -> faceApart(place, one)).toList();
            if (!across.isEmpty() && !isHeldBothWays()) {
                double middle = across.get(across.size() / 2).along;
                nearest(across, middle, length + 2 * bit).ifPresent(chosen::add);
            }
        }
    }

    private Optional<Place> nearest(List<Place> places, double ideal, double apart) {
        return places.stream()
                .filter(place -> chosen.stream().allMatch(other -> apart(place.along, other.along, around) >= apart))
                .min((a, b) -> Double.compare(apart(a.along, ideal, around), apart(b.along, ideal, around)));
    }

    private boolean isHeldBothWays() {
        return chosen.stream().anyMatch(one -> chosen.stream().anyMatch(other -> faceApart(one, other)));
    }

    private static boolean faceApart(Place one, Place other) {
        return one.outwards.x() * other.outwards.x() + one.outwards.y() * other.outwards.y() < OPPOSITE;
    }

    List<Mark.Open> lines() {
        return chosen.stream().map(Place::line).toList();
    }

    /** What to do where there are too few, or all on one side. */
    Optional<String> caution() {
        if (chosen.isEmpty()) {
            return Optional.of("no room for a tab, so nothing holds it: screw or tape it down, or make tabs shorter");
        }
        if (!isHeldBothWays()) {
            return Optional.of("held by " + chosen.size() + (chosen.size() == 1 ? " tab" : " tabs")
                    + " on one edge or on neighbouring edges only, so that it can tip or swing: screw or tape it down"
                    + " besides, or make tabs shorter");
        }
        return chosen.size() >= least
                ? Optional.empty()
                : Optional.of("room for " + chosen.size() + " of " + wanted
                        + " tabs only: hold it down in another way, or make tabs shorter");
    }

    private List<Place> places(Loop outline, List<Geometry> taken) {
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
                if (taken.stream().noneMatch(area -> area.isWithinDistance(here, Math.min(bit, FOOT)))) {
                    places.add(new Place(along + at, outwards(side), line));
                }
            }
            along += reach;
        }
        return places;
    }

    /** Outlines run counter-clockwise. */
    private static Vec2 outwards(Bend side) {
        var way = side.to().minus(side.from());
        return new Vec2(way.y(), -way.x()).times(1 / way.length());
    }

    private Mark.Open line(Bend side, double at) {
        double reach = side.length();
        return new Mark.Open(List.of(side.at((at - length / 2) / reach), side.at((at + length / 2) / reach)));
    }

    /** Whether a cut leaves less than a bridge under it; what is drilled by hand is drilled later. */
    private static boolean weakens(Operation cut, Face up, double deepest) {
        var work = cut.work();
        if (work.kind() == Kind.OUTLINE || work.kind() == Kind.CENTRE_MARK || work.isAfterTrim()) {
            return false;
        }
        boolean fromBelow = cut.face().filter(face -> face != up).isPresent();
        return fromBelow || Grid.less(deepest, work.depth().orElse(0));
    }

    /** What is cut within reach of the edge. */
    private static List<Geometry> taken(List<Operation> cuts, Geometry edge, double reach) {
        return cuts.stream()
                .map(cut -> cut.mark().accept(new MarkArea()))
                .filter(area -> !area.isEmpty() && area.isWithinDistance(edge, reach))
                .toList();
    }

    private static double apart(double a, double b, double around) {
        double one = Math.abs(a - b);
        return Math.min(one, around - one);
    }
}
