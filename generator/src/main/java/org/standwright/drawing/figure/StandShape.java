package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.DrawerLayout;
import org.standwright.design.Stand;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
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
            case RIGHT ->
                drawerBoxes(stand).map(box -> dashed(sight.project(box), scale)).toList();
        };
    }

    /** Drawers of the bay at the right, without their fronts. */
    private static Stream<Box3> drawerBoxes(Stand stand) {
        var drawers = stand.bays().get(stand.bays().size() - 1).drawers();
        return stand.assembly().groups().stream()
                .filter(group -> group.parts().stream()
                        .anyMatch(part -> drawers.stream().anyMatch(drawer -> isFront(part, drawer))))
                .map(group -> Box3.around(group.parts().stream()
                        .filter(part -> drawers.stream().noneMatch(drawer -> isFront(part, drawer)))
                        .map(PlacedPart::box)
                        .toList()));
    }

    private static boolean isFront(PlacedPart part, DrawerLayout drawer) {
        var seen = Sight.FRONT.project(part.box());
        var front = drawer.front();
        return Grid.same(seen.x0(), front.x0())
                && Grid.same(seen.y0(), front.y0())
                && Grid.same(seen.x1(), front.x1())
                && Grid.same(seen.y1(), front.y1());
    }

    private static Shape dashed(Rect rect, Scale scale) {
        return Polygon.of(scale.paper(rect), Pen.HIDDEN, Fill.NONE);
    }
}
