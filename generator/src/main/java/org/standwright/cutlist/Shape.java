package org.standwright.cutlist;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;

/**
 * What makes two parts the same piece of work: name, material, sizes, covered edges and features, whichever way round they lie. Of
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
        var turn = new Turn(part.length(), part.width(), part.thickness(), alongX, alongY, over);
        var features = part.features().stream().map(feature -> feature.accept(turn));
        return Stream.concat(features, turn.bands(part.bands())).sorted().toList();
    }

    private static long steps(double mm) {
        return Math.round(mm / STEP);
    }

    /** One feature in whole steps, whatever its kind: the box around it tells where it is and which way it was cut. */
    record Cutter(String kind, long x0, long y0, long z0, long x1, long y1, long z1) implements Comparable<Cutter> {
        private static final Comparator<Cutter> ORDER = Comparator.comparing(Cutter::kind)
                .thenComparingLong(Cutter::x0)
                .thenComparingLong(Cutter::y0)
                .thenComparingLong(Cutter::z0)
                .thenComparingLong(Cutter::x1)
                .thenComparingLong(Cutter::y1)
                .thenComparingLong(Cutter::z1);

        @Override
        public int compareTo(Cutter other) {
            return ORDER.compare(this, other);
        }
    }

    /** A feature after its blank was mirrored along x, along y or in thickness. */
    private record Turn(double length, double width, double thickness, boolean alongX, boolean alongY, boolean over)
            implements FeatureVisitor<Cutter> {
        @Override
        public Cutter channel(Channel channel) {
            return cutter("channel", channel.area(), channel.face(), channel.depth());
        }

        @Override
        public Cutter hole(Hole hole) {
            var kind = "hole " + hole.purpose()
                    + hole.recess()
                            .map(recess -> recess(recess) + side(hole.face()))
                            .orElse("");
            return cutter(kind, hole.boreArea(), hole.face(), hole.depthIn(thickness));
        }

        @Override
        public Cutter pocket(Pocket pocket) {
            var kind = "pocket " + pocket.purpose() + " r " + steps(pocket.radius()) + turned(pocket.outline());
            return cutter(kind, pocket.area(), pocket.face(), pocket.depthIn(thickness));
        }

        @Override
        public Cutter edgeHole(EdgeHole hole) {
            double r = hole.diameter() / 2;
            // at a corner the box alone does not tell an end from an edge
            var kind = (hole.edge().isEnd() ? "end hole " : "edge hole ") + hole.purpose();
            return cutter(kind, hole.area(length, width), hole.z() - r, hole.z() + r);
        }

        @Override
        public Cutter bevel(Bevel bevel) {
            // one as wide as the board fills the same box whichever edge it is at
            boolean far = bevel.edge().isFar() != (bevel.edge().isEnd() ? alongX : alongY);
            var kind = "bevel " + (bevel.edge().isEnd() ? "of the " : "along the ") + (far ? "far" : "near")
                    + side(bevel.face());
            return cutter(kind, bevel.area(length, width), bevel.face(), bevel.depth());
        }

        @Override
        public Cutter contour(Contour contour) {
            var kind = "contour " + contour.purpose() + turned(contour.outline());
            return cutter(kind, contour.outline().bounds(), 0, thickness);
        }

        private static String recess(Recess recess) {
            var wide = " " + steps(recess.diameter());
            return recess instanceof Recess.Countersink cone
                    ? wide + " at " + steps(cone.angle())
                    : wide + " to " + steps(recess.depth(0));
        }

        /** Where the box alone does not tell which face it was cut from. */
        private String side(Face face) {
            return over == (face == Face.BENCH) ? " upper" : " lower";
        }

        /** The corners in whole steps from the smallest one on; nothing for a rectangle, which its box tells. */
        private String turned(Outline outline) {
            if (outline.isRectangle()) {
                return "";
            }
            var corners = outline
                    .moved(at -> new Vec2(alongX ? length - at.x() : at.x(), alongY ? width - at.y() : at.y()))
                    .corners()
                    .stream()
                    .map(at -> steps(at.x()) + "," + steps(at.y()))
                    .toList();
            int first = corners.indexOf(Collections.min(corners));
            return Stream.concat(corners.stream().skip(first), corners.stream().limit(first))
                    .collect(Collectors.joining(" ", " ", ""));
        }

        /** A covered edge as if it were cut: as deep as its cover is thick. */
        Stream<Cutter> bands(Bands bands) {
            return Arrays.stream(Edge.values()).flatMap(edge -> bands.on(edge).map(band -> band(band, edge)).stream());
        }

        private Cutter band(Banding band, Edge edge) {
            return cutter("band " + band.name(), edge.strip(band.thickness(), length, width), 0, thickness);
        }

        private Cutter cutter(String kind, Rect area, Face face, double depth) {
            return face == Face.BENCH ? cutter(kind, area, 0, depth) : cutter(kind, area, thickness - depth, thickness);
        }

        private Cutter cutter(String kind, Rect area, double z0, double z1) {
            return new Cutter(
                    kind,
                    steps(alongX ? length - area.x1() : area.x0()),
                    steps(alongY ? width - area.y1() : area.y0()),
                    steps(over ? thickness - z1 : z0),
                    steps(alongX ? length - area.x0() : area.x1()),
                    steps(alongY ? width - area.y0() : area.y1()),
                    steps(over ? thickness - z0 : z1));
        }
    }
}
