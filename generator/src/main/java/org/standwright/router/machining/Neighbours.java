package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Removed;

/** What else is cut into a part, so that relief stays clear of it. */
final class Neighbours {
    /** How much of a corner's surroundings has to be gone for it to be no corner any more, mm. */
    private static final double NEAR = 0.5;

    private record Taken(Feature feature, Geometry area, Box3 box, boolean relieved) {}

    private final double thickness;
    private final double reliefReach;
    private final List<Taken> all = new ArrayList<>();

    /**
     * All features of a part.
     *
     * @param reliefReach how far reliefs of square corners reach into what is round them, mm
     */
    Neighbours(Part part, double reliefReach) {
        thickness = part.thickness();
        this.reliefReach = reliefReach;
        var removed = new Removed(part);
        var shape = new Footprint(part);
        for (var feature : part.features()) {
            if (!(feature instanceof Contour)) {
                boolean square = feature instanceof Channel || feature instanceof Pocket pocket && pocket.radius() == 0;
                all.add(new Taken(feature, feature.accept(shape), feature.accept(removed), square));
            }
        }
    }

    /** Whether another feature takes some of an area too, at a depth that this one reaches. */
    boolean meet(Sunk sunk, Geometry area) {
        double low = sunk.face() == Face.BENCH ? 0 : thickness - sunk.depth();
        double high = sunk.face() == Face.BENCH ? sunk.depth() : thickness;
        return all.stream()
                .filter(other -> other.feature != sunk.feature())
                .filter(other -> Grid.less(low, other.box.max().z())
                        && Grid.less(other.box.min().z(), high))
                .anyMatch(other -> other.area.isWithinDistance(area, other.relieved ? reliefReach : Grid.STEP));
    }

    /** The same channel, run out by so much, mm, where it ends in another channel or pocket as deep from the same face. */
    Sunk runInto(Sunk sunk, double by) {
        var runOuts = new ArrayList<>(sunk.runOuts());
        for (int i = 0; i < sunk.count(); i++) {
            var from = sunk.outline().corner(i);
            var way = sunk.outline().corner(i + 1).minus(from);
            var out = new Vec2(way.y(), -way.x()).times(by / way.length());
            if (runOuts.get(i).isEmpty() && isOpen(sunk, from, way, out)) {
                runOuts.set(i, Optional.of(out));
            }
        }
        return new Sunk(sunk.feature(), sunk.face(), sunk.outline(), sunk.radius(), sunk.depth(), runOuts);
    }

    private boolean isOpen(Sunk sunk, Vec2 from, Vec2 way, Vec2 out) {
        var beyond =
                Flat.of(new Outline(List.of(from, from.plus(out), from.plus(way).plus(out), from.plus(way))));
        return asDeep(sunk)
                .flatMap(other -> floor(other).stream())
                .anyMatch(floor -> floor.buffer(Grid.STEP).covers(beyond));
    }

    /** What a channel or pocket clears for certain: of a rounded one, all but its corners. */
    private static Optional<Geometry> floor(Taken taken) {
        if (taken.feature instanceof Pocket pocket && pocket.radius() > 0) {
            return Optional.of(taken.area.buffer(-pocket.radius()).buffer(pocket.radius()));
        }
        boolean square = taken.feature instanceof Channel || taken.feature instanceof Pocket;
        return square ? Optional.of(taken.area) : Optional.empty();
    }

    /** Whether the wood round a corner goes anyway, as deep at least. */
    boolean swallow(Sunk sunk, Vec2 corner) {
        var near = Flat.point(corner).buffer(NEAR);
        return asDeep(sunk).anyMatch(other -> other.area.covers(near));
    }

    /** What else is cut from the same face, as deep at least. */
    private Stream<Taken> asDeep(Sunk sunk) {
        return all.stream()
                .filter(other -> other.feature != sunk.feature())
                .filter(other -> sunk.face() == Face.BENCH
                        ? Grid.same(other.box.min().z(), 0)
                                && !Grid.less(other.box.max().z(), sunk.depth())
                        : Grid.same(other.box.max().z(), thickness)
                                && !Grid.less(
                                        thickness - sunk.depth(),
                                        other.box.min().z()));
    }

    /** Seen from above; nothing for what changes the outline. */
    private record Footprint(Part part) implements FeatureVisitor<Geometry> {
        @Override
        public Geometry channel(Channel channel) {
            return area(channel.area());
        }

        @Override
        public Geometry hole(Hole hole) {
            return Flat.disc(new Vec2(hole.x(), hole.y()), hole.area().width() / 2);
        }

        @Override
        public Geometry pocket(Pocket pocket) {
            return Flat.of(pocket.outline());
        }

        @Override
        public Geometry edgeHole(EdgeHole hole) {
            return area(hole.area(part.length(), part.width()));
        }

        @Override
        public Geometry bevel(Bevel bevel) {
            return area(bevel.area(part.length(), part.width()));
        }

        @Override
        public Geometry contour(Contour contour) {
            return Flat.nothing();
        }

        private static Geometry area(Rect area) {
            return Flat.of(Outline.of(area));
        }
    }
}
