package org.standwright.check.wall;

import java.util.Optional;
import org.standwright.check.fastener.HoldingWood;
import org.standwright.check.fastener.LoadDuration;
import org.standwright.check.fastener.NumberedScrew;
import org.standwright.check.fastener.SpecificGravity;
import org.standwright.check.wall.statics.ScrewedThrough;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.design.wall.Framing;

/** The screw that holds strips, as the sources rate it: in wood studs, through strips of plywood or of sawn wood. */
record StripScrew(HungWall wall) {

    /** Empty for a framing, a strip or a screw that no source here rates. */
    Optional<WallScrew> into(Framing framing) {
        return framing instanceof Framing.WoodStuds wood
                ? numbered().flatMap(screw -> strip().map(gravity -> into(wood, screw, gravity)))
                : Optional.empty();
    }

    /** The largest numbered wood screw within its diameter. */
    Optional<NumberedScrew> numbered() {
        return NumberedScrew.largestWithin(wall.design().fixing().screw().diameter());
    }

    Optional<SpecificGravity> strip() {
        return HoldingWood.of(wall.design().cleat().sheet().material());
    }

    private WallScrew into(Framing.WoodStuds wood, NumberedScrew screw, SpecificGravity gravity) {
        var screwing = wall.wall().screwing();
        var through = new ScrewedThrough(
                screwing.under(),
                gravity.value(),
                wood.covering(),
                wall.design().fixing().washer());
        return WallScrew.intoStud(screw, screwing.length(), through, wood.gravity(), LoadDuration.PERMANENT);
    }
}
