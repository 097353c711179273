package org.standwright.router.template;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.router.machining.Mm;

/** A few words for each feature, and where they should stand. */
record Captions(Part part) implements FeatureVisitor<Optional<Captions.Caption>> {
    /** Words round a point. */
    record Caption(String words, Vec2 at) {}

    /** How far from a hole's rim its words stand, mm. */
    private static final double AWAY = 4;

    /** From the edge, mm. */
    private static final double INSIDE = 10;

    @Override
    public Optional<Caption> channel(Channel channel) {
        return Optional.of(
                new Caption(side(channel.face()) + deep(OptionalDouble.of(channel.depth())), middle(channel.area())));
    }

    @Override
    public Optional<Caption> hole(Hole hole) {
        var face = hole.depth().isEmpty() && hole.recess().isEmpty() ? Face.SHOW : hole.face();
        var words = side(face) + "\u00d8 " + Mm.of(hole.diameter())
                + (hole.depth().isEmpty() ? " " : ", ") + deep(hole.depth());
        return Optional.of(new Caption(words, new Vec2(hole.x(), hole.area().y1() + AWAY)));
    }

    @Override
    public Optional<Caption> pocket(Pocket pocket) {
        var face = pocket.depth().isEmpty() ? Face.SHOW : pocket.face();
        return Optional.of(new Caption(side(face) + deep(pocket.depth()), middle(pocket.area())));
    }

    @Override
    public Optional<Caption> edgeHole(EdgeHole hole) {
        return Optional.of(
                new Caption("z " + Mm.of(hole.z()), TemplateFeatures.at(hole, INSIDE, part.length(), part.width())));
    }

    @Override
    public Optional<Caption> bevel(Bevel bevel) {
        return Optional.empty();
    }

    @Override
    public Optional<Caption> contour(Contour contour) {
        return Optional.empty();
    }

    private static String side(Face face) {
        return face == Face.BENCH ? "bench " : "";
    }

    private static String deep(OptionalDouble depth) {
        return depth.isEmpty() ? "through" : Mm.of(depth.getAsDouble()) + " deep";
    }

    private static Vec2 middle(Rect area) {
        return new Vec2((area.x0() + area.x1()) / 2, (area.y0() + area.y1()) / 2);
    }
}
