package org.standwright.check.bending;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.design.Cutout;
import org.standwright.design.Layout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Rect;

/**
 * What is cut out of a top, seen from above, in the assembly frame: holes for hoses and cords, squares around round ones, and
 * the whole plate of a router.
 */
record TopOpenings(List<Rect> areas) {
    TopOpenings {
        areas = List.copyOf(areas);
    }

    static TopOpenings of(Stand stand) {
        var cutouts = stand.design().cutouts().stream()
                .filter(cutout -> cutout.in() == Cutout.In.WORKTOP)
                .map(cutout -> area(cutout, stand));
        var plates = stand.assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.PLATE)
                .map(Block::box)
                .map(box -> new Rect(
                        box.min().x(), box.min().y(), box.max().x(), box.max().y()));
        return new TopOpenings(Stream.concat(cutouts, plates).toList());
    }

    /** A mirrored stand has them where its design, seen in a mirror, has them. */
    private static Rect area(Cutout cutout, Stand stand) {
        var carcass = stand.carcass();
        double x = stand.design().layout() == Layout.MIRRORED
                ? carcass.max().x() - cutout.x()
                : carcass.min().x() + cutout.x();
        double y = carcass.min().y() + cutout.y();
        if (cutout instanceof Cutout.Round round) {
            return around(x, y, round.diameter(), round.diameter());
        }
        var size = (Cutout.Rectangular) cutout;
        return around(x, y, size.width(), size.height());
    }

    private static Rect around(double x, double y, double width, double depth) {
        return new Rect(x - width / 2, y - depth / 2, x + width / 2, y + depth / 2);
    }

    /** The most that is missing, from front to back, of what lies between y0 and y1 anywhere over a span, mm. */
    double widest(double y0, double y1, Gap gap) {
        return areas.stream()
                .filter(area -> area.x1() > gap.x0() && area.x0() < gap.x1())
                .mapToDouble(area -> missing(Math.max(area.x0(), gap.x0()), y0, y1))
                .max()
                .orElse(0);
    }

    private double missing(double x, double y0, double y1) {
        return areas.stream()
                .filter(area -> area.x0() <= x && x < area.x1())
                .mapToDouble(area -> Math.max(0, Math.min(y1, area.y1()) - Math.max(y0, area.y0())))
                .sum();
    }
}
