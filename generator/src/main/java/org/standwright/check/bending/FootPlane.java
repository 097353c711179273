package org.standwright.check.bending;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Grid;

/**
 * Forces under a rigid base on feet that yield alike, N: even + overX (x - middle x) + overY (y - middle y). Feet in one line
 * balance only the moment along it.
 */
record FootPlane(Point2 middle, double even, double overX, double overY) {
    /** Feet whose spread to the side is a smaller share of that along a line than this, squared, lie in the line. */
    private static final double IN_LINE = 1e-9;

    static FootPlane of(List<Point2> feet, double weight, Point2 centre) {
        var middle = new Point2(
                feet.stream().mapToDouble(Point2::x).average().orElseThrow(),
                feet.stream().mapToDouble(Point2::y).average().orElseThrow());
        double xx = sum(feet, middle, (x, y) -> x * x);
        double xy = sum(feet, middle, (x, y) -> x * y);
        double yy = sum(feet, middle, (x, y) -> y * y);
        double aboutX = weight * (centre.x() - middle.x());
        double aboutY = weight * (centre.y() - middle.y());
        double even = weight / feet.size();
        double spread = xx + yy;
        double area = xx * yy - xy * xy;
        if (area > IN_LINE * spread * spread) {
            return new FootPlane(middle, even, (yy * aboutX - xy * aboutY) / area, (xx * aboutY - xy * aboutX) / area);
        }
        double line = Grid.same(spread, 0) ? 1 : spread * spread;
        return new FootPlane(middle, even, (xx * aboutX + xy * aboutY) / line, (xy * aboutX + yy * aboutY) / line);
    }

    double force(Point2 foot) {
        return even + overX * (foot.x() - middle.x()) + overY * (foot.y() - middle.y());
    }

    private static double sum(List<Point2> feet, Point2 middle, DoubleBinaryOperator product) {
        return feet.stream()
                .mapToDouble(foot -> product.applyAsDouble(foot.x() - middle.x(), foot.y() - middle.y()))
                .sum();
    }
}
