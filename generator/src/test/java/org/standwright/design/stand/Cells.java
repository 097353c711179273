package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;

/**
 * The wood of a placed part as boxes: its blank cut along the sides of every channel, the cells within a channel left
 * out. Holes stay filled, so that wood is never judged thinner than it is.
 */
public final class Cells {
    private Cells() {}

    public static List<Box3> of(PlacedPart placed) {
        var part = placed.part();
        var cut = part.features().stream()
                .filter(Channel.class::isInstance)
                .map(feature -> removed((Channel) feature, part.thickness()))
                .toList();
        var blank = new Box3(Vec3.ZERO, new Vec3(part.length(), part.width(), part.thickness()));
        var cells = new ArrayList<Box3>();
        for (var x : spans(
                0,
                part.length(),
                cut.stream()
                        .flatMapToDouble(b -> pair(b.min().x(), b.max().x()))
                        .toArray())) {
            for (var y : spans(
                    0,
                    part.width(),
                    cut.stream()
                            .flatMapToDouble(b -> pair(b.min().y(), b.max().y()))
                            .toArray())) {
                for (var z : spans(
                        0,
                        part.thickness(),
                        cut.stream()
                                .flatMapToDouble(b -> pair(b.min().z(), b.max().z()))
                                .toArray())) {
                    var cell = new Box3(new Vec3(x[0], y[0], z[0]), new Vec3(x[1], y[1], z[1]));
                    if (cut.stream().noneMatch(box -> box.overlap(cell) > 1e-9)) {
                        cells.add(Box3.between(
                                placed.placement().apply(cell.min()),
                                placed.placement().apply(cell.max())));
                    }
                }
            }
        }
        assert !cells.isEmpty() : blank;
        return cells;
    }

    /** How deep two parts reach into each other, mm; 0 or less when they only touch. */
    public static double penetration(List<Box3> a, List<Box3> b) {
        double deepest = Double.NEGATIVE_INFINITY;
        for (var one : a) {
            for (var other : b) {
                deepest = Math.max(deepest, one.overlap(other));
            }
        }
        return deepest;
    }

    private static Box3 removed(Channel channel, double thickness) {
        var area = channel.area();
        double z0 = channel.face() == Face.BENCH ? 0 : thickness - channel.depth();
        return new Box3(new Vec3(area.x0(), area.y0(), z0), new Vec3(area.x1(), area.y1(), z0 + channel.depth()));
    }

    private static java.util.stream.DoubleStream pair(double a, double b) {
        return java.util.stream.DoubleStream.of(a, b);
    }

    private static List<double[]> spans(double from, double to, double[] inner) {
        var marks = new TreeSet<Double>(List.of(from, to));
        for (double mark : inner) {
            marks.add(mark);
        }
        var spans = new ArrayList<double[]>();
        Double last = null;
        for (double mark : marks) {
            if (last != null && mark - last > 1e-9) {
                spans.add(new double[] {last, mark});
            }
            last = mark;
        }
        return spans;
    }
}
