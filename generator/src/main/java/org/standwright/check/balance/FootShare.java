package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.LoadedStand;
import org.standwright.check.balance.statics.Body;
import org.standwright.check.balance.statics.Contact;
import org.standwright.check.balance.statics.FourFeet;
import org.standwright.geom.Vec2;

/**
 * Where a full stand's centre of mass is, seen from above, and so what its four feet bear.
 *
 * @param drawers in words: 'everything closed'
 */
record FootShare(String drawers, Vec2 centre, FourFeet feet) {
    /**
     * Drawers all open one way, so that of all that may be open none or all bear most on one foot; where all together carry
     * the centre of mass beyond the feet it tips or hangs on its anchor, which is no longer about its feet.
     */
    static FootShare worst(LoadedStand loaded) {
        var standing = new Standing(loaded);
        var feet = FourFeet.of(standing.feet().stream().map(Contact::centre).toList());
        var closed = new FootShare("everything closed", centre(standing.fullClosed()), feet);
        var open = new FootShare(
                standing.isInterlocked() ? "one drawer of each bay open" : "all drawers open",
                centre(standing.fullDrawersOpen()),
                feet);
        return open.stands() && open.share() > closed.share() ? open : closed;
    }

    private boolean stands() {
        return aside() <= feet.a() / 2 && ahead() <= feet.b() / 2;
    }

    /** Of everything, on the foot that bears most. */
    double share() {
        return feet.most(centre);
    }

    /** How far left or right of the middle of the feet, mm. */
    double aside() {
        return Math.abs(centre.x() - feet.middle().x());
    }

    /** How far before or behind it, mm. */
    double ahead() {
        return Math.abs(centre.y() - feet.middle().y());
    }

    private static Vec2 centre(List<Body> bodies) {
        double mass = bodies.stream().mapToDouble(Body::mass).sum();
        return bodies.stream()
                .map(body -> new Vec2(body.centre().x(), body.centre().y()).times(body.mass() / mass))
                .reduce(Vec2.ZERO, Vec2::plus);
    }
}
