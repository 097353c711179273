package org.standwright.drawing.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
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

/**
 * A hole or a pocket as it is seen in a panel of the stand.
 *
 * @param area around it, from the corner that its list names, mm
 * @param radius of its corners, half its size where it is round, mm
 * @param outline where it is neither round nor a rectangle, before its corners are rounded, from the same corner, mm
 * @param depth empty for one that goes right through
 */
public record PanelHole(String purpose, Rect area, double radius, Optional<Outline> outline, OptionalDouble depth) {
    private static final String BACK = "back";

    /** Those of the worktop's uppermost layer, from the worktop's left and front edge, from left to right. */
    public static List<PanelHole> inWorktop(Stand stand) {
        double top = stand.carcass().max().z();
        return stand.assembly().parts().stream()
                .filter(part -> !Grid.less(part.box().min().z(), top))
                .max(Comparator.comparingDouble(part -> part.box().max().z()))
                .map(part -> in(part, Sight.TOP, stand.worktop()))
                .orElse(List.of());
    }

    /** Those right through the back, from the carcass's left and lower edge, from left to right. */
    public static List<PanelHole> inBack(Stand stand) {
        return stand.assembly().parts().stream()
                .filter(part -> part.part().name().equals(BACK))
                .flatMap(part -> in(part, Sight.FRONT, stand.carcass()).stream())
                .filter(hole -> hole.depth().isEmpty())
                .toList();
    }

    private static List<PanelHole> in(PlacedPart panel, Sight sight, Box3 from) {
        var corner = sight.project(from);
        var seen = new Seen(panel, sight, corner);
        return panel.part().features().stream()
                .flatMap(feature -> feature.accept(seen).stream())
                .sorted(Comparator.comparingDouble(PanelHole::x).thenComparingDouble(PanelHole::y))
                .toList();
    }

    /** Its centre from the left, mm. */
    public double x() {
        return (area.x0() + area.x1()) / 2;
    }

    /** Its centre from the front or from below, mm. */
    public double y() {
        return (area.y0() + area.y1()) / 2;
    }

    public boolean isRound() {
        return outline.isEmpty() && Grid.same(2 * radius, area.width()) && Grid.same(2 * radius, area.height());
    }

    private record Seen(PlacedPart panel, Sight sight, Rect corner) implements FeatureVisitor<Optional<PanelHole>> {
        @Override
        public Optional<PanelHole> channel(Channel channel) {
            return Optional.empty();
        }

        /** A recess shows from its own face only. */
        @Override
        public Optional<PanelHole> hole(Hole hole) {
            var area = placed(hole.face() == near() ? hole.area() : hole.boreArea());
            return seen(
                    hole.face(), new PanelHole(hole.purpose(), area, area.width() / 2, Optional.empty(), hole.depth()));
        }

        @Override
        public Optional<PanelHole> pocket(Pocket pocket) {
            var outline = Optional.of(pocket.outline())
                    .filter(any -> !any.isRectangle())
                    .map(any -> any.moved(this::placed));
            var area = placed(pocket.area());
            return seen(pocket.face(), new PanelHole(pocket.purpose(), area, pocket.radius(), outline, pocket.depth()));
        }

        @Override
        public Optional<PanelHole> edgeHole(EdgeHole hole) {
            return Optional.empty();
        }

        @Override
        public Optional<PanelHole> bevel(Bevel bevel) {
            return Optional.empty();
        }

        @Override
        public Optional<PanelHole> contour(Contour contour) {
            return Optional.empty();
        }

        private Optional<PanelHole> seen(Face face, PanelHole hole) {
            return Optional.of(hole).filter(any -> any.depth().isEmpty() || face == near());
        }

        private Face near() {
            var through = panel.placement().through();
            return through == Axis.Z_PLUS || through == Axis.Y_MINUS ? Face.SHOW : Face.BENCH;
        }

        private Vec2 placed(Vec2 at) {
            var seen = sight.flat(panel.placement().apply(new Vec3(at.x(), at.y(), 0)));
            return new Vec2(seen.x() - corner.x0(), seen.y() - corner.y0());
        }

        private Rect placed(Rect area) {
            Part part = panel.part();
            var placement = panel.placement();
            var seen = sight.project(Box3.between(
                    placement.apply(new Vec3(area.x0(), area.y0(), 0)),
                    placement.apply(new Vec3(area.x1(), area.y1(), part.thickness()))));
            return new Rect(
                    seen.x0() - corner.x0(), seen.y0() - corner.y0(), seen.x1() - corner.x0(), seen.y1() - corner.y0());
        }
    }
}
