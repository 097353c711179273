package org.standwright.solid;

import java.util.Optional;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.solid.layer.Ring;

/**
 * What each feature sweeps out of its board. A tool runs on by {@link #OVERSHOOT} wherever it leaves the board, so that
 * no face of it lies in a face of the board. A feature that vanishes on the grid needs no tool.
 */
final class Tools implements FeatureVisitor<Optional<Cut>> {
    /** 2 mm. */
    static final int OVERSHOOT = 2 * Solid.PER_MM;

    private final Part part;
    private final Extent board;
    private final Fineness fineness;

    Tools(Part part, Extent board, Fineness fineness) {
        this.part = part;
        this.board = board;
        this.fineness = fineness;
    }

    @Override
    public Optional<Cut> channel(Channel channel) {
        var area = channel.area();
        int x0 = beyondLow(snap(area.x0()));
        int y0 = beyondLow(snap(area.y0()));
        int x1 = beyondHigh(snap(area.x1()), board.x1());
        int y1 = beyondHigh(snap(area.y1()), board.y1());
        if (x1 <= x0 || y1 <= y0) {
            return Optional.empty();
        }
        return upright(Ring.rectangle(x0, y0, x1, y1), channel.face(), channel.depth());
    }

    @Override
    public Optional<Cut> hole(Hole hole) {
        double depth = hole.depthIn(part.thickness());
        if (hole.recess().isEmpty()) {
            return upright(circle(hole.x(), hole.y(), hole.diameter()), hole.face(), depth);
        }
        return hole.recess().get() instanceof Recess.Countersink cone
                ? countersunk(hole, cone)
                : counterbored(hole, hole.recess().get());
    }

    private Optional<Cut> counterbored(Hole hole, Recess recess) {
        var bore = upright(circle(hole.x(), hole.y(), hole.diameter()), hole.face(), hole.depthIn(part.thickness()));
        var wide = upright(circle(hole.x(), hole.y(), recess.diameter()), hole.face(), recess.depth(hole.diameter()));
        return bore.isEmpty() || wide.isEmpty() ? bore : Optional.of(bore.get().with(wide.get()));
    }

    private Optional<Cut> countersunk(Hole hole, Recess.Countersink recess) {
        int sides = fineness.sides(recess.diameter() / 2);
        var mouth = Rings.circle(hole.x(), hole.y(), recess.diameter() / 2, sides, part.name());
        var ring = Rings.circle(hole.x(), hole.y(), hole.diameter() / 2, sides, part.name());
        var bore = upright(ring.tidied(), hole.face(), hole.depthIn(part.thickness()));
        int deep = snap(recess.depth(hole.diameter()));
        boolean isSomething =
                deep > 0 && mouth.minU() < ring.minU() && ring.tidied().size() == sides;
        if (bore.isEmpty() || !isSomething) {
            return bore;
        }
        int face = hole.face() == Face.BENCH ? 0 : board.z1();
        int inwards = hole.face() == Face.BENCH ? 1 : -1;
        var cone = new Cone(mouth, ring, face, face + inwards * deep, face - inwards * OVERSHOOT);
        return Optional.of(bore.get().with(new Cut(cone)));
    }

    @Override
    public Optional<Cut> pocket(Pocket pocket) {
        return upright(PocketOutline.of(pocket, part, fineness), pocket.face(), pocket.depthIn(part.thickness()));
    }

    @Override
    public Optional<Cut> edgeHole(EdgeHole hole) {
        boolean end = hole.edge().isEnd();
        var direction = end ? Direction.ALONG_X : Direction.ALONG_Y;
        double reach = end ? part.length() : part.width();
        int far = direction.seen(board).z1();
        int bottom = hole.edge().isFar() ? beyondLow(snap(reach - hole.depth())) : -OVERSHOOT;
        int top = hole.edge().isFar() ? far + OVERSHOOT : beyondHigh(snap(hole.depth()), far);
        var ring =
                end ? circle(hole.along(), hole.z(), hole.diameter()) : circle(hole.z(), hole.along(), hole.diameter());
        if (!ring.isSomething() || bottom >= far || top <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Cut(new Prism(direction, ring, bottom, top)));
    }

    @Override
    public Optional<Cut> bevel(Bevel bevel) {
        boolean end = bevel.edge().isEnd();
        int reach = end ? board.x1() : board.y1();
        int out = bevel.edge().isFar() ? 1 : -1;
        int up = bevel.face() == Face.SHOW ? 1 : -1;
        int edge = bevel.edge().isFar() ? reach : 0;
        int face = bevel.face() == Face.SHOW ? board.z1() : 0;
        int back = edge - out * snap(bevel.setback());
        int down = face - up * snap(bevel.depth());
        int past = edge + out * OVERSHOOT;
        int above = face + up * OVERSHOOT;
        if (back == edge || down == face) {
            return Optional.empty();
        }
        var direction = end ? Direction.ALONG_Y : Direction.ALONG_X;
        // down the slope from the face to the edge, and back round outside the board
        int[] across = {back, back, edge, past, past};
        int[] height = {above, face, down, down, above};
        // seen along x the frame is (y, z), seen along y it is (z, x)
        var ring = end ? Ring.turnedLeft(height, across) : Ring.turnedLeft(across, height);
        int far = direction.seen(board).z1();
        return Optional.of(new Cut(new Prism(direction, ring, -OVERSHOOT, far + OVERSHOOT)));
    }

    /** Already in the blank. */
    @Override
    public Optional<Cut> contour(Contour contour) {
        return Optional.empty();
    }

    private Optional<Cut> upright(Ring ring, Face face, double depth) {
        int bottom = face == Face.BENCH ? -OVERSHOOT : beyondLow(snap(part.thickness() - depth));
        int top = face == Face.SHOW ? board.z1() + OVERSHOOT : beyondHigh(snap(depth), board.z1());
        if (!ring.isSomething() || bottom >= board.z1() || top <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Cut(Prism.upright(ring, bottom, top)));
    }

    private Ring circle(double u, double v, double diameter) {
        return Rings.circle(u, v, diameter / 2, fineness.sides(diameter / 2), part.name())
                .tidied();
    }

    private static int beyondLow(int units) {
        return units <= 0 ? -OVERSHOOT : units;
    }

    private static int beyondHigh(int units, int end) {
        return units >= end ? end + OVERSHOOT : units;
    }

    private int snap(double mm) {
        return Solid.units("coordinate", mm, part.name());
    }
}
