package org.standwright.check.wall;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.check.fastener.HoldingWood;
import org.standwright.check.fastener.LoadDuration;
import org.standwright.check.fastener.NumberedScrew;
import org.standwright.check.wall.statics.ScrewedThrough;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Strip;
import org.standwright.design.wall.holder.HolderMaker;
import org.standwright.geom.Interval;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;

/**
 * Screws between a holder and the cleats, all of one length, as the sources rate them; flat heads are not. They go through
 * the back, into the hanger or, where it is locked, into the strip.
 */
record HolderScrews(HungWall wall, HungHolder holder) {
    /** A lock takes two. */
    static final int LOCKING = 2;

    /** One of those in the hanger. */
    Optional<WallScrew> hanger() {
        var numbered =
                NumberedScrew.largestWithin(wall.design().making().screw().diameter());
        var back = wall.design().making().sheet().material();
        var cleat = wall.design().cleat().sheet().material();
        var side = HoldingWood.of(back);
        var main = HoldingWood.of(cleat);
        if (numbered.isEmpty() || side.isEmpty() || main.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(WallScrew.intoHanger(
                numbered.get(),
                new HolderMaker(wall.design()).hangerScrew(),
                ScrewedThrough.countersunk(back.thickness(), side.get().value(), 0),
                cleat.thickness(),
                main.get().value(),
                LoadDuration.PERMANENT));
    }

    /** Of those in the hanger, how many lie over a strip and count; never none. */
    int overStrips() {
        var strips = strips(wall, holder);
        return (int) Math.max(
                1,
                places(HolderMaker.HANGER_SCREW)
                        .filter(x ->
                                strips.stream().anyMatch(strip -> strip.along().holds(x)))
                        .count());
    }

    /** Of those that lock it to its strip, how many meet one, their diameter away from its ends; 0 where it is not locked. */
    int locking() {
        double spare = wall.design().making().screw().diameter();
        var strips = strips(wall, holder);
        return (int) places(HolderMaker.LOCK_SCREW)
                .filter(x -> strips.stream().anyMatch(strip -> strip.along().holds(new Interval(x - spare, x + spare))))
                .count();
    }

    /** What those that lock it to its strip hold across, N; 0 where it is not locked, or nothing rates them. */
    double lock() {
        return hanger().map(WallScrew::lateral).orElse(0.0) * locking();
    }

    /** Strips of the row that a holder hangs in, from the left. */
    static List<Strip> strips(HungWall wall, HungHolder holder) {
        return wall.wall().wall(holder.wall()).rows().stream()
                .filter(row -> row.number() == holder.row())
                .flatMap(row -> row.strips().stream())
                .toList();
    }

    /** Along the wall, of the holes in its back for a purpose. */
    private DoubleStream places(String purpose) {
        return holder.made().parts().stream()
                .filter(part -> part.label().equals(holder.name() + " back"))
                .flatMapToDouble(part -> part.part().features().stream()
                        .flatMap(feature -> feature instanceof Hole hole ? Stream.of(hole) : Stream.empty())
                        .filter(hole -> hole.purpose().equals(purpose))
                        .mapToDouble(hole -> holder.x()
                                + part.placement()
                                        .apply(new Vec3(hole.x(), hole.y(), 0))
                                        .x()));
    }
}
