package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Mount;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
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
    private record Seen(Box3 box, Pen pen, Fill fill) {
        boolean hides() {
            return fill != Fill.NONE;
        }
    }

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
        var visible = visible(seen, sight);
        hidden(stand, sight).stream()
                .flatMap(rect -> Edge.of(rect).stream())
                .filter(edge -> visible.stream().noneMatch(edge::liesOn))
                .forEach(edge -> shapes.add(edge.drawn(scale, Pen.HIDDEN)));
        return shapes;
    }

    /** Edges of the boxes, without those that a nearer box hides. */
    private static List<Edge> visible(List<Seen> seen, Sight sight) {
        var visible = new ArrayList<Edge>();
        for (int i = 0; i < seen.size(); i++) {
            var nearer = seen.subList(i + 1, seen.size()).stream()
                    .filter(Seen::hides)
                    .map(item -> sight.project(item.box()))
                    .toList();
            Edge.of(sight.project(seen.get(i).box())).stream()
                    .filter(edge -> nearer.stream().noneMatch(edge::isUnder))
                    .forEach(visible::add);
        }
        return visible;
    }

    /** A machine is seen through, so that what it stands on stays in sight. */
    private static Fill fill(Block block) {
        return block.kind() == Block.Kind.MACHINE ? Fill.NONE : Fill.LIGHT;
    }

    /** What lies behind: openings behind overlay fronts, the carcass under the worktop, boxes behind the side. */
    private static List<Rect> hidden(Stand stand, Sight sight) {
        boolean overlay = stand.design().drawers().mount() == Mount.OVERLAY;
        return switch (sight) {
            case FRONT ->
                Compartment.of(stand.bays()).stream()
                        .map(Compartment::section)
                        .filter(section -> overlay && hasFronts(section))
                        .map(SectionLayout::opening)
                        .toList();
            case TOP -> List.of(sight.project(stand.carcass()));
            case RIGHT -> drawerBoxes(stand).map(sight::project).toList();
        };
    }

    private static boolean hasFronts(SectionLayout section) {
        return section instanceof SectionLayout.Drawers || section instanceof SectionLayout.Closed;
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
}
