package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/**
 * Holders over the strips that they hang on: the outline of their boards, and dotted what they and their things take up.
 *
 * @param holders of this wall
 */
record HolderShapes(CleatedWall wall, List<HungHolder> holders, StripShapes strips, Scale scale) {
    /** Kept free beside a line, mm on paper. */
    private static final double LINE = 0.4;

    List<Shape> shapes() {
        var shapes = new ArrayList<Shape>();
        for (var holder : holders) {
            var room = scale.paper(holder.area());
            var boards = boards(holder);
            if (!same(room, boards)) {
                shapes.add(Polygon.of(room, Pen.DOTTED, Fill.NONE));
            }
            shapes.add(Polygon.of(boards, Pen.OUTLINE, Fill.NONE));
        }
        return shapes;
    }

    /** The upright sides of all that is drawn. */
    List<Rect> sides() {
        return rects().flatMap(rect -> Stream.of(
                        new Rect(rect.x0() - LINE, rect.y0(), rect.x0() + LINE, rect.y1()),
                        new Rect(rect.x1() - LINE, rect.y0(), rect.x1() + LINE, rect.y1())))
                .toList();
    }

    /** All that each takes up, on paper, with its lines. */
    List<Rect> areas() {
        return rects().map(rect -> new Rect(rect.x0() - LINE, rect.y0() - LINE, rect.x1() + LINE, rect.y1() + LINE))
                .toList();
    }

    private Stream<Rect> rects() {
        return holders.stream().flatMap(holder -> Stream.of(boards(holder), scale.paper(holder.area())));
    }

    /** Between the strips that each covers, the highest room first. */
    void name(WallLabels labels, Tags tags) {
        for (var holder : holders) {
            var area = scale.paper(holder.area());
            var rooms = List.of(between(boards(holder)), between(area));
            tags.name(holder.name(), labels.limit(holder.name()), rooms, area);
        }
    }

    /** Around all its boards, on paper. */
    private Rect boards(HungHolder holder) {
        if (holder.made().parts().isEmpty()) {
            return scale.paper(holder.area());
        }
        var box =
                Box3.around(holder.made().parts().stream().map(PlacedPart::box).toList());
        return scale.paper(new Rect(
                holder.x() + box.min().x(),
                holder.rowHeight() + box.min().z(),
                holder.x() + box.max().x(),
                holder.rowHeight() + box.max().z()));
    }

    /** The bands of an area that no strip lies behind, the highest first. */
    private List<Rect> between(Rect area) {
        var rooms = new ArrayList<Rect>();
        double from = area.y0();
        var behind = wall.strips().stream()
                .map(strips::area)
                .filter(strip -> strip.x0() < area.x1() && area.x0() < strip.x1())
                .filter(strip -> strip.y0() < area.y1() && area.y0() < strip.y1())
                .sorted(Comparator.comparingDouble(Rect::y0))
                .toList();
        for (var strip : behind) {
            add(area, from, strip.y0(), rooms);
            from = Math.max(from, strip.y1());
        }
        add(area, from, area.y1(), rooms);
        rooms.sort(Comparator.comparingDouble(Rect::height).reversed());
        return rooms;
    }

    private static void add(Rect area, double from, double to, List<Rect> rooms) {
        if (Grid.less(from, to)) {
            rooms.add(new Rect(area.x0(), from, area.x1(), to));
        }
    }

    private static boolean same(Rect a, Rect b) {
        return Grid.same(a.x0(), b.x0())
                && Grid.same(a.y0(), b.y0())
                && Grid.same(a.x1(), b.x1())
                && Grid.same(a.y1(), b.y1());
    }
}
