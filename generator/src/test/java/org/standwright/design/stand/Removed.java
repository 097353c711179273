package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/** Boxes of which a feature is sure to take all: never more than it takes, so that no collision is missed. */
final class Removed implements FeatureVisitor<List<Box3>> {
    private final Part part;

    Removed(Part part) {
        this.part = part;
    }

    @Override
    public List<Box3> channel(Channel channel) {
        return List.of(from(channel.face(), channel.area(), channel.depth()));
    }

    /** Stays filled. */
    @Override
    public List<Box3> hole(Hole hole) {
        return List.of();
    }

    /** Three boxes within the rounded outline, and the corners that are square because they lie on an edge. */
    @Override
    public List<Box3> pocket(Pocket pocket) {
        var area = pocket.area();
        double r = pocket.radius();
        double depth = pocket.depthIn(part.thickness());
        var boxes = new ArrayList<Box3>();
        for (double inX : new double[] {0, r, r * (1 - Math.sqrt(0.5))}) {
            double inY = inX == 0 ? r : inX == r ? 0 : inX;
            add(boxes, pocket, area.x0() + inX, area.y0() + inY, area.x1() - inX, area.y1() - inY, depth);
        }
        boolean left = area.x0() <= 0;
        boolean right = area.x1() >= part.length();
        boolean front = area.y0() <= 0;
        boolean rear = area.y1() >= part.width();
        if (left || front) {
            add(boxes, pocket, area.x0(), area.y0(), area.x0() + r, area.y0() + r, depth);
        }
        if (right || front) {
            add(boxes, pocket, area.x1() - r, area.y0(), area.x1(), area.y0() + r, depth);
        }
        if (left || rear) {
            add(boxes, pocket, area.x0(), area.y1() - r, area.x0() + r, area.y1(), depth);
        }
        if (right || rear) {
            add(boxes, pocket, area.x1() - r, area.y1() - r, area.x1(), area.y1(), depth);
        }
        return boxes;
    }

    /** The square prism within it. */
    @Override
    public List<Box3> edgeHole(EdgeHole hole) {
        var area = hole.area(part.length(), part.width());
        double half = hole.diameter() / 2 * Math.sqrt(0.5);
        double in = hole.diameter() / 2 - half;
        var square = hole.edge().isEnd()
                ? new Rect(area.x0(), area.y0() + in, area.x1(), area.y1() - in)
                : new Rect(area.x0() + in, area.y0(), area.x1() - in, area.y1());
        return List.of(box(square, hole.z() - half, hole.z() + half));
    }

    /** Stays filled. */
    @Override
    public List<Box3> bevel(Bevel bevel) {
        return List.of();
    }

    /** Stays filled. */
    @Override
    public List<Box3> contour(Contour contour) {
        return List.of();
    }

    private void add(List<Box3> boxes, Pocket pocket, double x0, double y0, double x1, double y1, double depth) {
        if (x1 - x0 > 1e-3 && y1 - y0 > 1e-3) {
            boxes.add(from(pocket.face(), new Rect(x0, y0, x1, y1), depth));
        }
    }

    private Box3 from(Face face, Rect area, double depth) {
        return face == Face.BENCH ? box(area, 0, depth) : box(area, part.thickness() - depth, part.thickness());
    }

    private static Box3 box(Rect area, double z0, double z1) {
        return new Box3(new Vec3(area.x0(), area.y0(), z0), new Vec3(area.x1(), area.y1(), z1));
    }
}
