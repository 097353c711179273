package org.standwright.check.balance;

import org.standwright.check.balance.statics.TippingCase;
import org.standwright.check.balance.statics.TippingEdge;
import org.standwright.design.Steady;
import org.standwright.geom.Vec3;

/** What an anchor has to hold: the moment that is missing over its lever arm, about the edge where that is most. */
record AnchorPull(Standing standing, TippingCase tipping) {
    /** N, so that with it {@code ratio} is reached about every edge. */
    double newtons(double ratio) {
        return standing.polygon().edges().stream()
                .mapToDouble(edge -> tipping.missing(ratio, edge) / arm(edge))
                .max()
                .orElse(0);
    }

    String words(double ratio) {
        var loaded = standing.loaded();
        var force = loaded.units().force(newtons(ratio));
        var capacity = " Its capacity is its maker's figure.";
        return loaded.design().steady().anchor() == Steady.Anchor.WALL
                ? "Its anchor at the top of the carcass must take a pull of " + force + ", which includes a factor of "
                        + ratio + ": fix it to studs or masonry, never to drywall alone." + capacity
                : "Its anchors to the floor must together take a pull of " + force
                        + " upwards at the edge away from where it tips, which includes a factor of " + ratio + "."
                        + capacity;
    }

    /** From the edge up to an anchor at the wall, or along the floor to the feet that lift. */
    private double arm(TippingEdge edge) {
        if (standing.loaded().design().steady().anchor() == Steady.Anchor.WALL) {
            return standing.loaded().stand().carcass().max().z();
        }
        return standing.feet().stream()
                .mapToDouble(foot ->
                        edge.inside(new Vec3(foot.centre().x(), foot.centre().y(), 0)))
                .max()
                .orElseThrow();
    }
}
