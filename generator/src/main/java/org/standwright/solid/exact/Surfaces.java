package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.List;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
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
import org.standwright.part.Recess;

/** The surfaces of a part as its features say them, equal ones once, before anything is cut. */
final class Surfaces implements FeatureVisitor<Void> {
    private static final Vec3 UP = new Vec3(0, 0, 1);

    private final Part part;
    private final List<Surface> different = new ArrayList<>();

    private Surfaces(Part part) {
        this.part = part;
    }

    static List<Surface> of(Part part) {
        var surfaces = new Surfaces(part);
        var board = Outline.of(new Rect(0, 0, part.length(), part.width()));
        surfaces.blank(part.contour().map(Contour::outline).orElse(board));
        part.features().forEach(feature -> feature.accept(surfaces));
        return List.copyOf(surfaces.different);
    }

    private void blank(Outline outline) {
        add(new Plane(UP.times(-1), 0));
        add(new Plane(UP, part.thickness()));
        for (int i = 0; i < outline.corners().size(); i++) {
            add(wall(outline.corner(i + 1), outline.corner(i)));
        }
    }

    @Override
    public Void channel(Channel channel) {
        walls(Outline.of(channel.area()));
        floor(channel.face(), channel.depth());
        return null;
    }

    @Override
    public Void pocket(Pocket pocket) {
        walls(pocket.outline());
        for (int i = 0; i < pocket.outline().corners().size(); i++) {
            if (pocket.rounding(i) > 0) {
                add(rounded(pocket, i));
            }
        }
        pocket.depth().ifPresent(depth -> floor(pocket.face(), depth));
        return null;
    }

    private static Cylinder rounded(Pocket pocket, int i) {
        var at = pocket.outline().corner(i);
        var back = pocket.outline().corner(i - 1).minus(at);
        back = back.times(1 / back.length());
        var inwards = new Vec2(back.y(), -back.x());
        var centre = at.plus(back.times(pocket.rounding(i))).plus(inwards.times(pocket.radius()));
        return new Cylinder(level(centre), UP, pocket.radius());
    }

    @Override
    public Void hole(Hole hole) {
        var centre = new Vec3(hole.x(), hole.y(), 0);
        add(new Cylinder(centre, UP, hole.diameter() / 2));
        hole.depth().ifPresent(depth -> floor(hole.face(), depth));
        hole.recess().ifPresent(recess -> {
            double depth = recess.depth(hole.diameter());
            if (recess instanceof Recess.Countersink sunk) {
                add(cone(hole, sunk, depth));
            } else {
                add(new Cylinder(centre, UP, recess.diameter() / 2));
                floor(hole.face(), depth);
            }
        });
        return null;
    }

    private Cone cone(Hole hole, Recess.Countersink sunk, double depth) {
        var bottom = new Vec3(hole.x(), hole.y(), below(hole.face(), depth));
        return new Cone(bottom, out(hole.face()), hole.diameter() / 2, StrictMath.toRadians(sunk.angle() / 2));
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        boolean end = hole.edge().isEnd();
        var axis = end ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        var centre = end ? new Vec3(0, hole.along(), hole.z()) : new Vec3(hole.along(), 0, hole.z());
        add(new Cylinder(centre, axis, hole.diameter() / 2));
        double reach = end ? part.length() : part.width();
        double bottom = hole.edge().isFar() ? reach - hole.depth() : hole.depth();
        add(Plane.through(axis.times(bottom), axis.times(hole.edge().isFar() ? 1 : -1)));
        return null;
    }

    @Override
    public Void bevel(Bevel bevel) {
        boolean end = bevel.edge().isEnd();
        double out = bevel.edge().isFar() ? 1 : -1;
        double reach = end ? part.length() : part.width();
        double back = (bevel.edge().isFar() ? reach : 0) - out * bevel.setback();
        double across = out * bevel.depth();
        double up = (bevel.face() == Face.SHOW ? 1 : -1) * bevel.setback();
        double face = below(bevel.face(), 0);
        var at = end ? new Vec3(back, 0, face) : new Vec3(0, back, face);
        add(Plane.through(at, end ? new Vec3(across, 0, up) : new Vec3(0, across, up)));
        return null;
    }

    /** Already in the blank. */
    @Override
    public Void contour(Contour contour) {
        return null;
    }

    /** The walls round what is taken out. */
    private void walls(Outline outline) {
        for (int i = 0; i < outline.corners().size(); i++) {
            add(wall(outline.corner(i), outline.corner(i + 1)));
        }
    }

    /** Looks to the left of the way from one corner to the next. */
    private static Plane wall(Vec2 from, Vec2 to) {
        var along = to.minus(from);
        return Plane.through(level(from), new Vec3(-along.y(), along.x(), 0));
    }

    private void floor(Face face, double depth) {
        add(Plane.through(new Vec3(0, 0, below(face, depth)), out(face)));
    }

    private double below(Face face, double depth) {
        return face == Face.BENCH ? depth : part.thickness() - depth;
    }

    private static Vec3 out(Face face) {
        return face == Face.BENCH ? UP.times(-1) : UP;
    }

    private static Vec3 level(Vec2 at) {
        return new Vec3(at.x(), at.y(), 0);
    }

    private void add(Surface surface) {
        if (different.stream().noneMatch(surface::isSame)) {
            different.add(surface);
        }
    }
}
