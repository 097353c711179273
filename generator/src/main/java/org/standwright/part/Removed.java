package org.standwright.part;

import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** The box around what a feature takes out of its part, in the part's frame. */
public final class Removed implements FeatureVisitor<Box3> {
    private final Part part;

    public Removed(Part part) {
        this.part = part;
    }

    @Override
    public Box3 channel(Channel channel) {
        return from(channel.face(), channel.area(), channel.depth());
    }

    @Override
    public Box3 hole(Hole hole) {
        return from(hole.face(), hole.area(), hole.depthIn(part.thickness()));
    }

    @Override
    public Box3 pocket(Pocket pocket) {
        return from(pocket.face(), pocket.area(), pocket.depthIn(part.thickness()));
    }

    @Override
    public Box3 edgeHole(EdgeHole hole) {
        double r = hole.diameter() / 2;
        return box(hole.area(part.length(), part.width()), hole.z() - r, hole.z() + r);
    }

    @Override
    public Box3 bevel(Bevel bevel) {
        return from(bevel.face(), bevel.area(part.length(), part.width()), bevel.depth());
    }

    /** The whole board: what a contour takes may lie anywhere round its edge. */
    @Override
    public Box3 contour(Contour contour) {
        return box(new Rect(0, 0, part.length(), part.width()), 0, part.thickness());
    }

    private Box3 from(Face face, Rect area, double depth) {
        return face == Face.BENCH ? box(area, 0, depth) : box(area, part.thickness() - depth, part.thickness());
    }

    private static Box3 box(Rect area, double z0, double z1) {
        return new Box3(new Vec3(area.x0(), area.y0(), z0), new Vec3(area.x1(), area.y1(), z1));
    }
}
