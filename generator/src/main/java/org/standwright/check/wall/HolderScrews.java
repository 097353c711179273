package org.standwright.check.wall;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.check.fastener.HoldingWood;
import org.standwright.check.fastener.LoadDuration;
import org.standwright.check.fastener.NumberedScrew;
import org.standwright.check.wall.statics.ScrewedThrough;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.part.Material;

/** Screws between a holder and the cleats, from the list of its hardware, as the sources rate them; flat heads are not. */
record HolderScrews(HungWall wall, MadeHolder made) {
    private static final String HANGER = "hanger, ";
    private static final String LOCK = "through the back into the strip";
    private static final int LOCKING = 2;

    /** Through the hanger into the face of the back. */
    Optional<WallScrew> hanger() {
        return screw(HANGER, cleat(), back());
    }

    /** What the two that lock it to its strip hold across, N; 0 where it is not locked, or nothing rates them. */
    double lock() {
        return screw(LOCK, back(), cleat()).map(WallScrew::lateral).orElse(0.0) * LOCKING;
    }

    private Material cleat() {
        return wall.design().cleat().sheet().material();
    }

    private Material back() {
        return wall.design().making().sheet().material();
    }

    private Optional<WallScrew> screw(String use, Material through, Material into) {
        var numbered =
                NumberedScrew.largestWithin(wall.design().making().screw().diameter());
        var length = length(use);
        var side = HoldingWood.of(through);
        var main = HoldingWood.of(into);
        if (numbered.isEmpty() || length.isEmpty() || side.isEmpty() || main.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(WallScrew.intoHanger(
                numbered.get(),
                length.getAsDouble(),
                ScrewedThrough.countersunk(through.thickness(), side.get().value(), 0),
                into.thickness(),
                main.get().value(),
                LoadDuration.PERMANENT));
    }

    private OptionalDouble length(String use) {
        var family = wall.design().making().screw();
        var lines = made.hardware().stream()
                .filter(line -> line.use().startsWith(made.holder().name() + ", " + use))
                .toList();
        return family.lengths().stream()
                .filter(length -> lines.stream()
                        .anyMatch(line -> line.item().equals(family.name() + " x " + wall.units().length(length))))
                .mapToDouble(Double::doubleValue)
                .max();
    }
}
