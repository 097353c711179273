package org.standwright.cutlist;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;

/**
 * What makes two parts the same piece of work: name, material, sizes and features, whichever way round they lie. Of
 * the four positions in which a blank covers itself the one with the smallest list of features stands for all.
 */
record Shape(String name, Material material, long length, long width, long oversize, List<Cutter> features) {
    /** Sizes that differ by less than this are the same size on a cut list, mm. */
    private static final double STEP = 1e-4;

    private static final Comparator<List<Cutter>> ORDER = (a, b) -> {
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            int order = a.get(i).compareTo(b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.size(), b.size());
    };

    static Shape of(Part part) {
        return of(part, false);
    }

    /** The shape of the part's mirror image. */
    static Shape mirrored(Part part) {
        return of(part, true);
    }

    private static Shape of(Part part, boolean mirror) {
        var features = Stream.of(
                        turned(part, mirror, false, false),
                        turned(part, !mirror, true, false),
                        turned(part, mirror, true, true),
                        turned(part, !mirror, false, true))
                .min(ORDER)
                .orElseThrow();
        return new Shape(
                part.name(),
                part.material(),
                steps(part.length()),
                steps(part.width()),
                steps(part.oversize()),
                features);
    }

    private static List<Cutter> turned(Part part, boolean alongX, boolean alongY, boolean over) {
        var turn = new Turn(part.length(), part.width(), alongX, alongY, over);
        return part.features().stream()
                .map(feature -> feature.accept(turn))
                .sorted()
                .toList();
    }

    private static long steps(double mm) {
        return Math.round(mm / STEP);
    }

    /** One feature in whole steps, whatever its kind. */
    record Cutter(String kind, Face face, long x0, long y0, long x1, long y1, long depth)
            implements Comparable<Cutter> {
        private static final Comparator<Cutter> ORDER = Comparator.comparing(Cutter::kind)
                .thenComparing(Cutter::face)
                .thenComparingLong(Cutter::x0)
                .thenComparingLong(Cutter::y0)
                .thenComparingLong(Cutter::x1)
                .thenComparingLong(Cutter::y1)
                .thenComparingLong(Cutter::depth);

        @Override
        public int compareTo(Cutter other) {
            return ORDER.compare(this, other);
        }
    }

    /** A feature after its blank was mirrored along x, along y or in thickness. */
    private record Turn(double length, double width, boolean alongX, boolean alongY, boolean over)
            implements FeatureVisitor<Cutter> {
        @Override
        public Cutter channel(Channel channel) {
            var area = channel.area();
            return cutter("channel", channel, area.x0(), area.y0(), area.x1(), area.y1(), channel.depth());
        }

        @Override
        public Cutter hole(Hole hole) {
            double r = hole.diameter() / 2;
            double x = hole.x();
            double y = hole.y();
            boolean through = hole.depth().isEmpty();
            var cutter = cutter(
                    hole.purpose(),
                    hole,
                    x - r,
                    y - r,
                    x + r,
                    y + r,
                    hole.depth().orElse(0));
            return through ? new Cutter(cutter.kind, Face.SHOW, cutter.x0, cutter.y0, cutter.x1, cutter.y1, 0) : cutter;
        }

        private Cutter cutter(String kind, Feature feature, double x0, double y0, double x1, double y1, double depth) {
            return new Cutter(
                    kind,
                    over ? feature.face().opposite() : feature.face(),
                    steps(alongX ? length - x1 : x0),
                    steps(alongY ? width - y1 : y0),
                    steps(alongX ? length - x0 : x1),
                    steps(alongY ? width - y0 : y1),
                    steps(depth));
        }
    }
}
