package org.standwright.check.balance;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.balance.statics.Force;
import org.standwright.check.balance.statics.Moments;
import org.standwright.check.balance.statics.TippingEdge;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.unit.Units;

/** Where the loads of EN 16122:2012, 11.2, are put on a worktop: 50 mm from its edges, in its corners. */
final class TopCorners {
    /** Units higher than this are pressed down less and pulled besides, mm (11.2.2). */
    static final double HIGH = 1000;
    /** Down on units that are no higher, N (11.2.1). */
    static final double DOWN = 750;

    private static final double DOWN_HIGH = 350;
    private static final double OUT_HIGH = 50;
    /** mm. */
    private static final double FROM_EDGE = 50;

    private final Box3 top;

    TopCorners(Stand stand) {
        this.top = stand.worktop();
    }

    /** Moments of a force down on each corner. */
    List<Moments> down(double newtons, TippingEdge edge) {
        return corners().map(at -> edge.of(Force.down(newtons, at))).toList();
    }

    /** Moments of 350 N down on each corner and 50 N outwards at the same height. */
    List<Moments> high(TippingEdge edge) {
        var out = edge.push(OUT_HIGH, top.max().z());
        return down(DOWN_HIGH, edge).stream().map(out::plus).toList();
    }

    static String highWords(Units units) {
        return "the worktop is pressed down with " + units.force(DOWN_HIGH) + " and pulled out with "
                + units.force(OUT_HIGH);
    }

    private Stream<Vec3> corners() {
        var size = top.size();
        double x = Math.min(FROM_EDGE, size.x() / 2);
        double y = Math.min(FROM_EDGE, size.y() / 2);
        double z = top.max().z();
        return Stream.of(
                new Vec3(top.min().x() + x, top.min().y() + y, z),
                new Vec3(top.max().x() - x, top.min().y() + y, z),
                new Vec3(top.max().x() - x, top.max().y() - y, z),
                new Vec3(top.min().x() + x, top.max().y() - y, z));
    }
}
