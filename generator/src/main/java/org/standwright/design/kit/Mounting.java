package org.standwright.design.kit;

import java.util.List;

/**
 * How a machine is bolted down.
 *
 * @param flange thickness of the foot or flange under the bolts' heads, mm
 * @param bolt nominal diameter of the bolts, mm
 * @param origin of the hole pattern, from the left and front of the base
 * @param holes centres of the bolts, from {@code origin}
 */
public record Mounting(double flange, double bolt, Point2 origin, List<Point2> holes) {
    public Mounting {
        holes = List.copyOf(holes);
    }
}
