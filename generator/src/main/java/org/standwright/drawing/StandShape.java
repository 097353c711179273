package org.standwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.design.Stand;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;

/**
 * The boxes of a stand seen from one side. Nearer boxes are laid over farther ones, which hides what lies behind:
 * enough for boxes along the axes that do not penetrate each other.
 */
final class StandShape {
    private record Seen(Box3 box, Pen pen, Fill fill) {}

    private StandShape() {}

    static List<Shape> of(Stand stand, Sight sight, Scale scale) {
        var seen = new ArrayList<Seen>();
        var assembly = stand.assembly();
        assembly.parts().forEach(part -> seen.add(new Seen(part.box(), Pen.OUTLINE, Fill.WHITE)));
        assembly.blocks().forEach(block -> seen.add(new Seen(block.box(), Pen.THIN, fill(block))));
        seen.sort(Comparator.comparing(Seen::box, sight.farthestFirst()));
        var shapes = new ArrayList<Shape>();
        for (var item : seen) {
            shapes.add(Polygon.of(scale.paper(sight.project(item.box())), item.pen(), item.fill()));
        }
        shapes.addAll(hidden(stand, sight, scale));
        return shapes;
    }

    /** A machine is seen through, so that what it stands on stays in sight. */
    private static Fill fill(Block block) {
        return block.kind() == Block.Kind.MACHINE ? Fill.NONE : Fill.LIGHT;
    }

    private static List<Shape> hidden(Stand stand, Sight sight, Scale scale) {
        return switch (sight) {
            case FRONT ->
                stand.bays().stream().map(bay -> dashed(bay.opening(), scale)).toList();
            case TOP -> List.of(dashed(sight.project(stand.carcass()), scale));
            case RIGHT -> List.of();
        };
    }

    private static Shape dashed(Rect rect, Scale scale) {
        return Polygon.of(scale.paper(rect), Pen.HIDDEN, Fill.NONE);
    }
}
