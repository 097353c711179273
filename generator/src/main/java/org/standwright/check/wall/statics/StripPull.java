package org.standwright.check.wall.statics;

import org.standwright.geom.Grid;

/**
 * A bevelled strip, pulled off what it is screwed to: the wall strip off its wall, the hanger off its holder.
 *
 * <p>The strip pries about its edge away from the bevel: a wall strip's lower, a hanger's upper. About that edge the pull T
 * at height h and the weight, t/2 in front of the face that the screws hold, turn it off; the screws at height a hold it:
 * Fw = (T h + W t/2) / (n a), Fv = W/n (own derivation, references 3.8). That the hanger's own back may lean on the wall and
 * take some of T from its screws is left out, which is on the safe side.
 *
 * @param pullHeight h: of the middle of the bevel over the edge away from it, mm
 * @param screwHeight a: of the screws over that edge, mm; no more than h
 * @param share of the whole that the most loaded screw gets; more than 1 where the load hangs beyond the last stud
 */
public record StripPull(Hanging hanging, double pullHeight, double screwHeight, double share) {
    public StripPull {
        Given.positive("height of the pull over the strip's far edge", pullHeight, "mm");
        Given.positive("height of the screws over the strip's far edge", screwHeight, "mm");
        Given.positive("share of a screw", share, "");
        if (Grid.less(pullHeight, screwHeight)) {
            throw Given.refused(
                    "height of the screws over the strip's far edge",
                    screwHeight,
                    "mm",
                    "must be no more than that of the pull, " + pullHeight + " mm; put them below the bevel");
        }
    }

    /** @param screws n, those that count, each with the same */
    public static StripPull evenly(Hanging hanging, double pullHeight, double screwHeight, int screws) {
        if (screws < 1) {
            throw Given.refused("number of screws that count", screws, "", "must be at least 1");
        }
        return new StripPull(hanging, pullHeight, screwHeight, 1.0 / screws);
    }

    /** What the most loaded screw gets. */
    public ScrewLoad perScrew() {
        double turning = hanging.pull() * pullHeight
                + hanging.carried() * hanging.bevel().middle();
        return new ScrewLoad(share * turning / screwHeight, share * hanging.carried());
    }

    /** The same strip with more or less on it. */
    public StripPull weighing(double newtons) {
        return new StripPull(hanging.weighing(newtons), pullHeight, screwHeight, share);
    }
}
