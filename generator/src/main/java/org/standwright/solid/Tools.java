package org.standwright.solid;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.part.Channel;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.solid.Prism.Corner;

/**
 * What each feature sweeps out of its blank. A tool runs on by {@link #OVERSHOOT} wherever it leaves the blank, so that
 * no face of it lies in a face of the blank. A feature that vanishes on the grid needs no tool.
 */
final class Tools implements FeatureVisitor<Optional<Prism>> {
    /** 2 mm. */
    static final int OVERSHOOT = 2 * Solid.PER_MM;

    private final Part part;
    private final Prism blank;
    private final Fineness fineness;

    Tools(Part part, Prism blank, Fineness fineness) {
        this.part = part;
        this.blank = blank;
        this.fineness = fineness;
    }

    @Override
    public Optional<Prism> channel(Channel channel) {
        var area = channel.area();
        int x0 = beyondLow(snap(area.x0()));
        int y0 = beyondLow(snap(area.y0()));
        int x1 = beyondHigh(snap(area.x1()), blank.extent().x1());
        int y1 = beyondHigh(snap(area.y1()), blank.extent().y1());
        int bottom = bottom(channel.face(), channel.depth());
        int top = top(channel.face(), channel.depth());
        if (x1 <= x0 || y1 <= y0 || isNothing(bottom, top)) {
            return Optional.empty();
        }
        return Optional.of(Prism.box(x0, y0, x1, y1, bottom, top));
    }

    @Override
    public Optional<Prism> hole(Hole hole) {
        var outline = circle(hole.x(), hole.y(), hole.diameter() / 2);
        return upright(outline, hole.face(), hole.depthIn(part.thickness()));
    }

    @Override
    public Optional<Prism> pocket(Pocket pocket) {
        var outline = new PocketOutline(pocket, part, blank.extent(), fineness).corners();
        return upright(outline, pocket.face(), pocket.depthIn(part.thickness()));
    }

    @Override
    public Optional<Prism> edgeHole(EdgeHole hole) {
        boolean end = hole.edge().isEnd();
        var direction = end ? Direction.ALONG_X : Direction.ALONG_Y;
        double reach = end ? part.length() : part.width();
        int far = direction.seen(blank.extent()).z1();
        int bottom = hole.edge().isFar() ? beyondLow(snap(reach - hole.depth())) : -OVERSHOOT;
        int top = hole.edge().isFar() ? far + OVERSHOOT : beyondHigh(snap(hole.depth()), far);
        double r = hole.diameter() / 2;
        var outline = end ? circle(hole.along(), hole.z(), r) : circle(hole.z(), hole.along(), r);
        if (outline.size() < 3 || bottom >= far || top <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Prism(direction, outline, bottom, top));
    }

    private Optional<Prism> upright(List<Corner> outline, Face face, double depth) {
        int bottom = bottom(face, depth);
        int top = top(face, depth);
        if (outline.size() < 3 || isNothing(bottom, top)) {
            return Optional.empty();
        }
        return Optional.of(Prism.upright(outline, bottom, top));
    }

    private List<Corner> circle(double u, double v, double radius) {
        int sides = fineness.sides(radius);
        double reach = fineness.cornerRadius(radius);
        return Prism.strictlyConvex(IntStream.range(0, sides)
                .mapToObj(side -> 2 * Math.PI * side / sides)
                .map(angle ->
                        new Corner(snap(u + reach * StrictMath.cos(angle)), snap(v + reach * StrictMath.sin(angle))))
                .toList());
    }

    private int bottom(Face face, double depth) {
        return face == Face.BENCH ? -OVERSHOOT : beyondLow(snap(part.thickness() - depth));
    }

    private int top(Face face, double depth) {
        return face == Face.SHOW ? blank.top() + OVERSHOOT : beyondHigh(snap(depth), blank.top());
    }

    private boolean isNothing(int bottom, int top) {
        return bottom >= blank.top() || top <= 0;
    }

    static int beyondLow(int units) {
        return units <= 0 ? -OVERSHOOT : units;
    }

    static int beyondHigh(int units, int end) {
        return units >= end ? end + OVERSHOOT : units;
    }

    private int snap(double mm) {
        return Solid.units("coordinate", mm, part.name());
    }
}
