package org.standwright.drawing.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;

/**
 * A hole or a pocket that is seen in the worktop from above.
 *
 * @param area around it, from the worktop's left and front edge, mm
 * @param radius of its corners, half its size where it is round, mm
 * @param depth empty for one that goes right through the worktop's upper layer
 */
public record WorktopHole(String purpose, Rect area, double radius, OptionalDouble depth) {
    /** Those of the uppermost layer, from left to right, then from front to back. */
    public static List<WorktopHole> of(Stand stand) {
        double top = stand.carcass().max().z();
        return stand.assembly().parts().stream()
                .filter(part -> !Grid.less(part.box().min().z(), top))
                .max(Comparator.comparingDouble(part -> part.box().max().z()))
                .map(WorktopHole::in)
                .orElse(List.of());
    }

    private static List<WorktopHole> in(PlacedPart worktop) {
        var seen = new Seen(worktop);
        return worktop.part().features().stream()
                .flatMap(feature -> feature.accept(seen).stream())
                .sorted(Comparator.comparingDouble((WorktopHole hole) -> hole.x())
                        .thenComparingDouble(WorktopHole::y))
                .toList();
    }

    /** Its centre from the worktop's left edge, mm. */
    public double x() {
        return (area.x0() + area.x1()) / 2;
    }

    /** Its centre from the worktop's front edge, mm. */
    public double y() {
        return (area.y0() + area.y1()) / 2;
    }

    public boolean isRound() {
        return Grid.same(2 * radius, area.width()) && Grid.same(2 * radius, area.height());
    }

    private record Seen(PlacedPart worktop) implements FeatureVisitor<Optional<WorktopHole>> {
        @Override
        public Optional<WorktopHole> channel(Channel channel) {
            return Optional.empty();
        }

        @Override
        public Optional<WorktopHole> hole(Hole hole) {
            double r = hole.diameter() / 2;
            var area = new Rect(hole.x() - r, hole.y() - r, hole.x() + r, hole.y() + r);
            return seen(hole.face(), new WorktopHole(hole.purpose(), placed(area), r, hole.depth()));
        }

        @Override
        public Optional<WorktopHole> pocket(Pocket pocket) {
            var hole = new WorktopHole(pocket.purpose(), placed(pocket.area()), pocket.radius(), pocket.depth());
            return seen(pocket.face(), hole);
        }

        @Override
        public Optional<WorktopHole> edgeHole(EdgeHole hole) {
            return Optional.empty();
        }

        private Optional<WorktopHole> seen(Face face, WorktopHole hole) {
            var up = worktop.placement().through() == Axis.Z_PLUS ? Face.SHOW : Face.BENCH;
            return Optional.of(hole).filter(any -> any.depth().isEmpty() || face == up);
        }

        private Rect placed(Rect area) {
            var placement = worktop.placement();
            var a = placement.apply(new Vec3(area.x0(), area.y0(), 0));
            var b = placement.apply(new Vec3(area.x1(), area.y1(), 0));
            var corner = worktop.box().min();
            return new Rect(
                    Math.min(a.x(), b.x()) - corner.x(),
                    Math.min(a.y(), b.y()) - corner.y(),
                    Math.max(a.x(), b.x()) - corner.x(),
                    Math.max(a.y(), b.y()) - corner.y());
        }
    }
}
