package org.standwright.check.balance.statics;

/** How far a stand leans over an edge before it falls: {@code atan(b / h)}, its centre of mass b inside and h high. */
public final class TipAngle {
    private TipAngle() {}

    /**
     * The share of one body: its mass times b against its mass times h, so that shares add up, and contents that may be
     * there can be chosen by {@link LeastRatio}.
     */
    public static Moments share(Body body, TippingEdge edge) {
        return new Moments(
                body.mass() * edge.inside(body.centre()),
                body.mass() * body.centre().z());
    }

    /** Degrees; 0 or less where it falls by itself. */
    public static double degrees(Moments shares) {
        return StrictMath.toDegrees(StrictMath.atan2(shares.restoring(), shares.overturning()));
    }
}
