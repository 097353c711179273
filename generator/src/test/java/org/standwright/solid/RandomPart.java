package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Envelope;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.part.Run;

/**
 * Boards with features at random: those of even seeds lie anywhere, those of odd seeds on a coarse lattice, where most
 * share planes, edges or corners with others. In three of ten boards sloping cuts meet others as chance has it; in the
 * rest they keep clear.
 */
public final class RandomPart {
    private static final double LENGTH = 300;
    private static final double WIDTH = 200;
    private static final int MOST_SLOPING = 6;
    private static final int TRIES = 20;

    private final SplittableRandom random;
    /** Everything lies on multiples of this, mm. */
    private final double step;

    private final double thickness;
    private final boolean meeting;
    private final RandomOutline outlines;
    private final List<Feature> features = new ArrayList<>();

    private RandomPart(long seed) {
        random = new SplittableRandom(seed);
        step = seed % 2 == 0 ? 1e-9 : 10 * random.nextInt(1, 3);
        thickness = step > 1 ? 6 * random.nextInt(2, 5) : random.nextDouble(9, 30);
        meeting = seed / 2 % 10 < 3;
        outlines = new RandomOutline(random, step);
    }

    public static Part of(long seed) {
        var random = new RandomPart(seed);
        random.fill();
        return random.board((seed % 2 == 0 ? "anywhere " : "lattice ") + seed).with(random.features);
    }

    private Part board(String name) {
        return Part.blank(name, new Material("board", thickness, 700, Grain.NONE), LENGTH, WIDTH);
    }

    private void fill() {
        if (random.nextInt(4) == 0) {
            features.add(new Contour(contour(), "contour"));
        }
        int count = random.nextInt(6) > 0 ? random.nextInt(21) : random.nextInt(21, 61);
        int sloping = Math.min(count, random.nextInt(MOST_SLOPING + 1));
        for (int i = sloping; i < count; i++) {
            features.add(straight());
        }
        for (int i = 0; i < sloping; i++) {
            addSloping();
        }
    }

    /** A smaller rectangle, so that cuts lie outside too; a board with a corner cut off; or anything. */
    private Outline contour() {
        return switch (random.nextInt(3)) {
            case 0 -> outlines.within(new Rect(0, 0, LENGTH, WIDTH));
            case 1 -> Outline.of(new Rect(0, random.nextBoolean() ? 0 : 20, LENGTH - 40, WIDTH - 60));
            default ->
                new Outline(List.of(
                        new Vec2(0, 0),
                        new Vec2(LENGTH, 0),
                        new Vec2(LENGTH, 100),
                        new Vec2(random.nextBoolean() ? 160 : 280, 100),
                        new Vec2(160, WIDTH),
                        new Vec2(0, WIDTH)));
        };
    }

    /** One whose walls are upright. */
    private Feature straight() {
        return switch (random.nextInt(8)) {
            case 0, 1 -> new Channel(face(), random.nextBoolean() ? Run.ALONG : Run.ACROSS, area(), depth());
            case 2 -> pocket(Outline.of(area()));
            case 3, 4 -> pocket(outlines.within(area()));
            case 5 -> counterbored(hole());
            default -> hole();
        };
    }

    private void addSloping() {
        for (int i = 0; i < TRIES; i++) {
            var feature = sloping();
            if (meeting || isClear(feature)) {
                features.add(feature);
                return;
            }
        }
    }

    private Feature sloping() {
        return switch (random.nextInt(5)) {
            case 0, 1 -> edgeHole();
            case 2 -> bevel();
            default -> countersunk(hole());
        };
    }

    /** Whether a feature shares no place, seen from above, with those there are. */
    private boolean isClear(Feature feature) {
        var around = around(feature);
        around.expandBy(1);
        return features.stream().noneMatch(other -> around(other).intersects(around));
    }

    private Envelope around(Feature feature) {
        var taken = new Footprints(board("board").with(feature), false);
        var around = new Envelope();
        taken.cuts().forEach(cut -> around.expandToInclude(cut.around()));
        taken.sloped().forEach(cut -> around.expandToInclude(cut.around()));
        return around;
    }

    /** Over the whole length, over the whole width, at a corner or anywhere; seldom large. */
    private Rect area() {
        double x0 = between(0, LENGTH - 2 * step - 1);
        double y0 = between(0, WIDTH - 2 * step - 1);
        double x1 = between(x0 + step + 0.5, x0 + step + 0.5 + (LENGTH - x0 - step - 0.5) * share());
        double y1 = between(y0 + step + 0.5, y0 + step + 0.5 + (WIDTH - y0 - step - 0.5) * share());
        return switch (random.nextInt(8)) {
            case 0 -> new Rect(0, y0, LENGTH, y1);
            case 1 -> new Rect(x0, 0, x1, WIDTH);
            case 2 -> new Rect(0, y0, x1, y1);
            case 3 -> new Rect(x0, y0, LENGTH, WIDTH);
            default -> new Rect(x0, y0, x1, y1);
        };
    }

    private double share() {
        double share = random.nextDouble();
        return share * share;
    }

    private Pocket pocket(Outline outline) {
        double most = RandomOutline.largestRadius(outline);
        double radius = switch (random.nextInt(4)) {
            case 0 -> 0;
            case 1 -> most;
            default -> step > 1 ? Math.min(most, 5 * random.nextInt(1, 5)) : random.nextDouble() * most;
        };
        var depth = random.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(depth());
        var rounded = new Pocket(face(), outline, radius, depth, "pocket");
        var blank = board("board");
        // a corner that points inwards may reach into the rounding of another
        return RoundedOutline.of(rounded, blank, RandomOutline::onGrid).isValid()
                ? rounded
                : new Pocket(rounded.face(), outline, 0, depth, "pocket");
    }

    private EdgeHole edgeHole() {
        var edge = Edge.values()[random.nextInt(4)];
        double most = thickness / 2 - 1;
        double radius = step > 1 ? 3 * random.nextInt(1, (int) most / 3 + 1) : random.nextDouble(1, most);
        double z = step > 1 ? thickness / 2 : random.nextDouble(radius, thickness - radius);
        double along = between(radius, (edge.isEnd() ? WIDTH : LENGTH) - radius);
        double reach = edge.isEnd() ? LENGTH : WIDTH;
        double depth = random.nextInt(10) == 0 ? reach : between(step > 1 ? step : 1, 0.5 * reach);
        return new EdgeHole(edge, along, z, 2 * radius, depth, "bore");
    }

    private Bevel bevel() {
        var edge = Edge.values()[random.nextInt(4)];
        double depth = random.nextInt(3) == 0 ? thickness : depth();
        return new Bevel(edge, face(), step > 1 ? 45 : random.nextDouble(5, 70), depth);
    }

    private Hole hole() {
        double radius = step > 1 ? 5 * random.nextInt(1, 5) : 1 + 39 * share();
        double x = between(radius, LENGTH - radius);
        double y = between(radius, WIDTH - radius);
        return random.nextInt(3) == 0
                ? new Hole(face(), x, y, 2 * radius, OptionalDouble.empty(), Optional.empty(), "through")
                : Hole.blind(face(), x, y, 2 * radius, depth(), "blind");
    }

    private Hole counterbored(Hole hole) {
        double wider = step > 1 ? 10 : random.nextDouble(0.5, 15);
        double depth = random.nextDouble(0.1, 0.9) * hole.depthIn(thickness);
        return recessed(hole, new Recess.Counterbore(hole.diameter() + wider, step > 1 ? 1 : depth));
    }

    private Hole countersunk(Hole hole) {
        double wider = step > 1 ? 4 : random.nextDouble(0.5, 10);
        double angle = step > 1 ? 90 : random.nextDouble(60, 140);
        return recessed(hole, new Recess.Countersink(hole.diameter() + wider, angle));
    }

    /** With the recess, where the board has room for it. */
    private Hole recessed(Hole hole, Recess recess) {
        var wide = hole.with(recess).area();
        boolean fits = wide.x0() >= 0 && wide.y0() >= 0 && wide.x1() <= LENGTH && wide.y1() <= WIDTH;
        return fits && recess.depth(hole.diameter()) < hole.depthIn(thickness) - 0.01 ? hole.with(recess) : hole;
    }

    private Face face() {
        return random.nextBoolean() ? Face.SHOW : Face.BENCH;
    }

    private double depth() {
        return step > 1 ? 3 * random.nextInt(1, (int) thickness / 3) : random.nextDouble(1, thickness - 1);
    }

    private double between(double low, double high) {
        if (high <= low) {
            return low;
        }
        double steps = Math.rint(random.nextDouble(low, high) / step);
        return Math.max(low, Math.min(high, steps * step));
    }
}
