package org.standwright.check.wall;

import java.util.Optional;
import org.standwright.check.fastener.HoldingWood;
import org.standwright.check.fastener.LoadDuration;
import org.standwright.check.fastener.NumberedScrew;
import org.standwright.check.wall.statics.ScrewedThrough;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.design.wall.holder.HolderMaker;

/**
 * Screws between a holder and the cleats, all of one length, as the sources rate them; flat heads are not. They go through
 * the back, into the hanger or, where it is locked, into the strip.
 */
record HolderScrews(HungWall wall, MadeHolder made) {
    private static final int LOCKING = 2;

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

    /** What the two that lock it to its strip hold across, N; 0 where it is not locked, or nothing rates them. */
    double lock() {
        return made.holder().lock() ? hanger().map(WallScrew::lateral).orElse(0.0) * LOCKING : 0;
    }
}
