package org.standwright.check.balance;

import java.util.Comparator;
import org.standwright.check.balance.statics.TippingCase;
import org.standwright.check.balance.statics.TippingEdge;
import org.standwright.design.Steady;
import org.standwright.design.kit.Side;
import org.standwright.geom.Vec3;

/**
 * What an anchor has to hold: the moment that is missing over its lever arm, about the edge where that is most. At a wall
 * the lever is the height of the carcass's top where the stand tips away from the wall. Where it tips to a side, the two
 * angles there hold with less: half the carcass's width is taken, as if one of them held alone from its middle. Towards
 * the wall it leans on, where the height is taken too.
 */
record AnchorPull(Standing standing, TippingCase tipping) {
    /** N, so that with it {@code ratio} is reached about every edge. */
    double newtons(double ratio) {
        return pull(ratio, worst(ratio));
    }

    /** The rest of a sentence: 'its anchor must take a pull of 640 N ...'. */
    String words(double ratio) {
        var force = standing.loaded().units().force(newtons(ratio));
        var factor = " (factor " + ratio + " included; capacity: its maker's figure)";
        if (!isAtWall()) {
            return "its anchors to the floor must together take a pull of " + force
                    + " upwards at the edge away from where it tips" + factor;
        }
        var sideways = isSideways(worst(ratio)) ? " sideways, at a lever of half its width" : "";
        return "its anchor at the top of the carcass must take a pull of " + force + sideways + factor
                + ", in studs or masonry, never in drywall alone";
    }

    private TippingEdge worst(double ratio) {
        return standing.polygon().edges().stream()
                .max(Comparator.comparingDouble(edge -> pull(ratio, edge)))
                .orElseThrow();
    }

    private double pull(double ratio, TippingEdge edge) {
        return tipping.missing(ratio, edge) / arm(edge);
    }

    private boolean isAtWall() {
        return standing.loaded().design().steady().anchor() == Steady.Anchor.WALL;
    }

    private static boolean isSideways(TippingEdge edge) {
        var side = EdgeSide.of(edge);
        return side == Side.LEFT || side == Side.RIGHT;
    }

    /** From the edge up to an anchor at the wall or half across the carcass, or along the floor to the feet that lift. */
    private double arm(TippingEdge edge) {
        var carcass = standing.loaded().stand().carcass();
        if (isAtWall()) {
            return isSideways(edge) ? carcass.size().x() / 2 : carcass.max().z();
        }
        return standing.feet().stream()
                .mapToDouble(foot ->
                        edge.inside(new Vec3(foot.centre().x(), foot.centre().y(), 0)))
                .max()
                .orElseThrow();
    }
}
