package org.standwright.router.template;

import java.util.List;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Loop;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Colour;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.router.machining.Finished;
import org.standwright.router.machining.Kind;
import org.standwright.router.machining.Mm;

/** Every feature of a part as lines on a template, each face's on layers of their own. */
final class TemplateFeatures implements FeatureVisitor<Void> {
    /** What layers of the face below begin with. */
    static final String BELOW = "bench face ";

    private static final Colour BESIDE = new Colour(200, 0, 0);
    private static final Colour CENTRES = new Colour(120, 120, 120);
    /** How far a cross reaches past its hole, and a tick into the part, mm. */
    private static final double PAST = 3;

    private static final double TICK = 8;

    private final Part part;
    private final Layers layers;

    TemplateFeatures(Part part, Layers layers) {
        this.part = part;
        this.layers = layers;
    }

    @Override
    public Void channel(Channel channel) {
        add(channel.face(), "channel " + deep(channel.depth()), Kind.CHANNEL, new Mark.Closed(Loop.of(channel.area())));
        return null;
    }

    @Override
    public Void pocket(Pocket pocket) {
        var line = new Mark.Closed(Finished.of(pocket, part));
        if (pocket.depth().isEmpty()) {
            add(Face.SHOW, "cutout", Kind.CUTOUT, line);
        } else {
            add(pocket.face(), "pocket " + deep(pocket.depth().getAsDouble()), Kind.POCKET, line);
        }
        return null;
    }

    @Override
    public Void hole(Hole hole) {
        var at = new Vec2(hole.x(), hole.y());
        var wide = Mm.of(hole.diameter());
        boolean whole = hole.depth().isEmpty();
        add(
                whole ? Face.SHOW : hole.face(),
                "bore " + wide + (whole ? " through" : " " + deep(hole.depth().getAsDouble())),
                Kind.BORE,
                new Mark.Circle(at, hole.diameter()));
        hole.recess()
                .ifPresent(recess -> add(
                        hole.face(),
                        recess(recess, hole.diameter()),
                        Kind.BORE,
                        new Mark.Circle(at, recess.diameter())));
        double arm = hole.area().width() / 2 + PAST;
        cross(at, new Vec2(arm, 0));
        cross(at, new Vec2(0, arm));
        return null;
    }

    private static String recess(Recess recess, double bore) {
        return recess instanceof Recess.Countersink cone
                ? "countersink " + Mm.of(cone.diameter()) + " at " + Mm.of(cone.angle()) + " degrees"
                : "counterbore " + Mm.of(recess.diameter()) + " " + deep(recess.depth(bore));
    }

    private void cross(Vec2 at, Vec2 arm) {
        layers.add("centres", CENTRES, new Mark.Open(List.of(at.minus(arm), at.plus(arm))));
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        var edge = at(hole, 0);
        layers.add(
                "edge bore " + Mm.of(hole.diameter()) + " " + deep(hole.depth()) + " z " + Mm.of(hole.z()),
                BESIDE,
                new Mark.Open(List.of(edge, at(hole, Math.min(TICK, hole.depth())))));
        return null;
    }

    /** A point of its axis, so far from the edge. */
    static Vec2 at(EdgeHole hole, double inside, double length, double width) {
        return switch (hole.edge()) {
            case X0 -> new Vec2(inside, hole.along());
            case X1 -> new Vec2(length - inside, hole.along());
            case Y0 -> new Vec2(hole.along(), inside);
            case Y1 -> new Vec2(hole.along(), width - inside);
        };
    }

    private Vec2 at(EdgeHole hole, double inside) {
        return at(hole, inside, part.length(), part.width());
    }

    @Override
    public Void bevel(Bevel bevel) {
        layers.add(
                (bevel.face() == Face.BENCH ? BELOW : "") + "bevel at " + Mm.of(bevel.tilt()) + " degrees",
                BESIDE,
                new Mark.Closed(Loop.of(bevel.area(part.length(), part.width()))));
        return null;
    }

    @Override
    public Void contour(Contour contour) {
        return null;
    }

    private void add(Face face, String layer, Kind kind, Mark mark) {
        layers.add((face == Face.BENCH ? BELOW : "") + layer, kind.colour(), mark);
    }

    private static String deep(double depth) {
        return Mm.of(depth) + " deep";
    }
}
