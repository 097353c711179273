package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Run;

/** Boards with features at random. */
final class RandomPart {
    private static final double LENGTH = 300;
    private static final double WIDTH = 200;

    private final SplittableRandom random;
    /** Everything lies on multiples of this, mm: a coarse step makes features flush, tangent and touching. */
    private final double step;

    private final double thickness;

    private RandomPart(long seed, double step) {
        random = new SplittableRandom(seed);
        this.step = step;
        thickness = step > 1 ? 18 : random.nextDouble(12, 25);
    }

    /** Features that lie anywhere. */
    static Part anywhere(long seed, int fewest, int most) {
        return new RandomPart(seed, 1e-9).part("anywhere " + seed, fewest, most);
    }

    /** Features on a coarse lattice: most of them share planes, edges or corners with others. */
    static Part onLattice(long seed, int fewest, int most) {
        return new RandomPart(seed, 20).part("lattice " + seed, fewest, most);
    }

    /** Many holes into the edges, so that they meet each other and a few other features. */
    static Part bored(long seed) {
        var random = new RandomPart(seed, seed % 2 == 0 ? 1e-9 : 20);
        var features = new ArrayList<Feature>();
        for (int i = 0; i < 8; i++) {
            features.add(random.edgeHole());
        }
        return random.part("bored " + seed, 1, 3).with(features);
    }

    private Part part(String name, int fewest, int most) {
        var material = new Material("board", thickness, 700, Grain.NONE);
        int count = random.nextInt(fewest, most + 1);
        List<Feature> features = new ArrayList<>();
        while (features.size() < count) {
            features.add(feature());
        }
        return Part.blank(name, material, LENGTH, WIDTH).with(features);
    }

    private Feature feature() {
        return switch (random.nextInt(6)) {
            case 0, 1 -> channel();
            case 2, 3 -> hole();
            case 4 -> pocket();
            default -> edgeHole();
        };
    }

    private Channel channel() {
        return new Channel(face(), Run.ALONG, area(), depth());
    }

    private Rect area() {
        double x0 = between(0, LENGTH - 2 * step - 1);
        double y0 = between(0, WIDTH - 2 * step - 1);
        double x1 = between(x0 + step + 0.5, LENGTH);
        double y1 = between(y0 + step + 0.5, WIDTH);
        return switch (random.nextInt(4)) {
            case 0 -> new Rect(0, y0, LENGTH, y1);
            case 1 -> new Rect(x0, 0, x1, WIDTH);
            default -> new Rect(x0, y0, x1, y1);
        };
    }

    private Pocket pocket() {
        var area = area();
        double most = Math.min(area.width(), area.height()) / 2;
        double radius = step > 1 ? Math.min(most, 5 * random.nextInt(0, 5)) : random.nextDouble(0, most);
        return random.nextInt(3) == 0
                ? Pocket.through(area, radius, "cutout")
                : Pocket.blind(face(), area, radius, depth(), "pocket");
    }

    private EdgeHole edgeHole() {
        var edge = Edge.values()[random.nextInt(4)];
        double radius = step > 1 ? 3 * random.nextInt(1, 3) : random.nextDouble(1, thickness / 2);
        double z = step > 1 ? 3 * random.nextInt(2, 5) : random.nextDouble(radius, thickness - radius);
        double along = between(radius, (edge.isEnd() ? WIDTH : LENGTH) - radius);
        double depth = between(step > 1 ? step : 1, (edge.isEnd() ? LENGTH : WIDTH) - 1);
        return new EdgeHole(edge, along, z, 2 * radius, depth, "bore");
    }

    private Hole hole() {
        double radius = step > 1 ? 5 * random.nextInt(1, 5) : random.nextDouble(1, 40);
        double x = between(radius, LENGTH - radius);
        double y = between(radius, WIDTH - radius);
        return random.nextInt(3) == 0
                ? Hole.through(x, y, 2 * radius, "through")
                : Hole.blind(face(), x, y, 2 * radius, depth(), "blind");
    }

    private Face face() {
        return random.nextBoolean() ? Face.SHOW : Face.BENCH;
    }

    private double depth() {
        return step > 1 ? 3 * random.nextInt(2, 5) : random.nextDouble(1, thickness - 1);
    }

    private double between(double low, double high) {
        double steps = Math.rint(random.nextDouble(low, high) / step);
        return Math.max(low, Math.min(high, steps * step));
    }
}
