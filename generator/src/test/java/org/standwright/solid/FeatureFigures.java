package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.part.Removed;

/**
 * Volume, centre and round faces of a part in closed formulas, where no feature meets another or leaves the blank by
 * half: a sum of prisms, cylinders and frustums. None for pockets with corners that are all but straight.
 */
final class FeatureFigures implements FeatureVisitor<Void> {
    private static final double CLEAR = 0.01;
    /** An arc that cuts off less of its corner than this may come out as the corner, mm. */
    private static final double LEAST = 0.005;

    /**
     * What a solid should come to.
     *
     * @param volume mm³
     * @param centre of the volume, mm
     */
    record Figures(double volume, Vec3 centre, int cylinders, int cones) {}

    private final Part part;
    private double volume;
    private Vec3 moment = Vec3.ZERO;
    private int cylinders;
    private int cones;

    private FeatureFigures(Part part) {
        this.part = part;
    }

    static Optional<Figures> of(Part part) {
        if (!isClear(part)) {
            return Optional.empty();
        }
        var figures = new FeatureFigures(part);
        var blank = polygon(outline(part));
        figures.add(blank.getArea() * part.thickness(), flat(blank, part.thickness() / 2));
        part.features().forEach(feature -> feature.accept(figures));
        return Optional.of(new Figures(
                figures.volume, figures.moment.times(1 / figures.volume), figures.cylinders, figures.cones));
    }

    private static Outline outline(Part part) {
        return part.contour().map(Contour::outline).orElse(Outline.of(new Rect(0, 0, part.length(), part.width())));
    }

    private static boolean isClear(Part part) {
        var features = part.features().stream()
                .filter(feature -> !(feature instanceof Contour))
                .toList();
        var removed = new Removed(part);
        for (int i = 0; i < features.size(); i++) {
            if (!isWithin(features.get(i), part) || features.get(i) instanceof Pocket pocket && isFlat(pocket)) {
                return false;
            }
            for (int j = 0; j < i; j++) {
                if (features.get(i).accept(removed).overlap(features.get(j).accept(removed)) > -CLEAR) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a rounded corner is all but straight. */
    private static boolean isFlat(Pocket pocket) {
        double r = pocket.radius();
        for (int i = 0; i < pocket.outline().corners().size(); i++) {
            double taken = pocket.rounding(i);
            if (taken > 0 && Math.sqrt(taken * taken + r * r) - r < LEAST) {
                return true;
            }
        }
        return false;
    }

    /** Inside the outline; in a rectangle, channels, pockets, edge holes and bevels may end at its edge. */
    private static boolean isWithin(Feature feature, Part part) {
        var box = feature.accept(new Removed(part));
        var around = new Envelope(
                box.min().x(), box.max().x(), box.min().y(), box.max().y());
        boolean round = feature instanceof Hole;
        around.expandBy(part.contour().isPresent() || round ? CLEAR : -CLEAR);
        return polygon(outline(part)).covers(Footprints.FACTORY.toGeometry(around));
    }

    private static Polygon polygon(Outline outline) {
        var ring = new ArrayList<Coordinate>();
        for (int i = 0; i <= outline.corners().size(); i++) {
            ring.add(new Coordinate(outline.corner(i).x(), outline.corner(i).y()));
        }
        return Footprints.FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static Vec3 flat(Polygon polygon, double z) {
        var centre = polygon.getCentroid();
        return new Vec3(centre.getX(), centre.getY(), z);
    }

    private void add(double more, Vec3 centre) {
        volume += more;
        moment = moment.plus(centre.times(more));
    }

    private void take(double area, Vec2 centre, Face face, double from, double to) {
        add(-area * (to - from), new Vec3(centre.x(), centre.y(), below(face, (from + to) / 2)));
    }

    private double below(Face face, double depth) {
        return face == Face.BENCH ? depth : part.thickness() - depth;
    }

    @Override
    public Void channel(Channel channel) {
        var area = channel.area();
        var centre = new Vec2((area.x0() + area.x1()) / 2, (area.y0() + area.y1()) / 2);
        take(area.width() * area.height(), centre, channel.face(), 0, channel.depth());
        return null;
    }

    @Override
    public Void hole(Hole hole) {
        double r = hole.diameter() / 2;
        var centre = new Vec2(hole.x(), hole.y());
        double sunk = hole.recess().map(recess -> recess.depth(hole.diameter())).orElse(0.0);
        take(Math.PI * r * r, centre, hole.face(), sunk, hole.depthIn(part.thickness()));
        cylinders++;
        hole.recess().ifPresent(recess -> {
            double wide = recess.diameter() / 2;
            if (recess instanceof Recess.Counterbore) {
                take(Math.PI * wide * wide, centre, hole.face(), 0, sunk);
                cylinders++;
            } else {
                double squares = wide * wide + wide * r + r * r;
                double deep = sunk / 4 * (wide * wide + 2 * wide * r + 3 * r * r) / squares;
                add(-Math.PI * sunk / 3 * squares, new Vec3(hole.x(), hole.y(), below(hole.face(), deep)));
                cones++;
            }
        });
        return null;
    }

    @Override
    public Void pocket(Pocket pocket) {
        var polygon = polygon(pocket.outline());
        double depth = pocket.depthIn(part.thickness());
        var middle = flat(polygon, 0);
        take(polygon.getArea(), new Vec2(middle.x(), middle.y()), pocket.face(), 0, depth);
        var axes = new ArrayList<Vec2>();
        for (int i = 0; i < pocket.outline().corners().size(); i++) {
            if (pocket.rounding(i) > 0 && !isOpen(pocket, i - 1) && !isOpen(pocket, i)) {
                corner(pocket, i, depth, axes);
            }
        }
        cylinders += axes.size();
        return null;
    }

    /** Whether the side from a corner to the next lies on the blank's edge. */
    private boolean isOpen(Pocket pocket, int corner) {
        var a = pocket.outline().corner(corner);
        var b = pocket.outline().corner(corner + 1);
        return both(a.x(), b.x(), 0)
                || both(a.x(), b.x(), part.length())
                || both(a.y(), b.y(), 0)
                || both(a.y(), b.y(), part.width());
    }

    private static boolean both(double a, double b, double edge) {
        return Math.abs(a - edge) < 1e-6 && Math.abs(b - edge) < 1e-6;
    }

    /** Gives back what lies between a corner and its arc: the kite of both tangents, less the sector. */
    private void corner(Pocket pocket, int i, double depth, List<Vec2> axes) {
        var at = pocket.outline().corner(i);
        var back = unit(pocket.outline().corner(i - 1).minus(at));
        var on = unit(pocket.outline().corner(i + 1).minus(at));
        double inside = Math.acos(back.x() * on.x() + back.y() * on.y());
        double r = pocket.radius();
        double taken = r / Math.tan(inside / 2);
        var axis = at.plus(unit(back.plus(on)).times(r / Math.sin(inside / 2)));
        double turn = Math.PI - inside;
        double sector = r * r * turn / 2;
        var kite =
                at.times(2).plus(axis.times(2)).plus(at.plus(back.times(taken))).plus(at.plus(on.times(taken)));
        var out = unit(at.minus(axis));
        var arc = axis.plus(out.times(4 * r * Math.sin(turn / 2) / (3 * turn)));
        take(-r * taken, kite.times(1.0 / 6), pocket.face(), 0, depth);
        take(sector, arc, pocket.face(), 0, depth);
        if (axes.stream().noneMatch(other -> other.minus(axis).length() < 1e-6)) {
            axes.add(axis);
        }
    }

    private static Vec2 unit(Vec2 v) {
        return v.times(1 / v.length());
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        var box = hole.accept(new Removed(part));
        double r = hole.diameter() / 2;
        add(-Math.PI * r * r * hole.depth(), box.centre());
        cylinders++;
        return null;
    }

    @Override
    public Void bevel(Bevel bevel) {
        var box = bevel.accept(new Removed(part));
        double reach = bevel.edge().isEnd() ? part.width() : part.length();
        double in = bevel.setback() / 3;
        double deep = below(bevel.face(), bevel.depth() / 3);
        var middle = box.centre();
        var centre = switch (bevel.edge()) {
            case X0 -> new Vec3(in, middle.y(), deep);
            case X1 -> new Vec3(part.length() - in, middle.y(), deep);
            case Y0 -> new Vec3(middle.x(), in, deep);
            case Y1 -> new Vec3(middle.x(), part.width() - in, deep);
        };
        add(-bevel.setback() * bevel.depth() / 2 * reach, centre);
        return null;
    }

    @Override
    public Void contour(Contour contour) {
        return null;
    }
}
