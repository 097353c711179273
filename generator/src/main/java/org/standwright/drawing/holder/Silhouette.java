package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standwright.assembly.PlacedPart;
import org.standwright.drawing.figure.Sight;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Removed;

/** One board as it is seen: its outline, the edges of its slopes and cutouts, and how near they are. */
final class Silhouette {
    /** Far enough inside the wood to be in it for certain, mm. */
    private static final double INSIDE = 0.01;

    private final PlacedPart placed;
    private final Sight sight;
    private final List<Vec2> corners;
    private final List<Box3> channels;

    Silhouette(PlacedPart placed, Sight sight) {
        this.placed = placed;
        this.sight = sight;
        this.corners = local().stream().map(this::seen).toList();
        this.channels = placed.part().features().stream()
                .filter(Channel.class::isInstance)
                .map(channel -> box(channel.accept(new Removed(placed.part()))))
                .toList();
    }

    List<Vec2> corners() {
        return corners;
    }

    List<Segment> outline() {
        return IntStream.range(0, corners.size())
                .mapToObj(i -> new Segment(corners.get(i), corners.get((i + 1) % corners.size())))
                .toList();
    }

    double nearness() {
        return sight.nearness(placed.box());
    }

    /** Rims of its channels: where what is seen of its edges may end. */
    List<Segment> rims() {
        return channels.stream().flatMap(box -> sides(box).stream()).toList();
    }

    /** Whether a point lies within its outline, not on it. */
    boolean covers(Vec2 point) {
        if (outline().stream().anyMatch(side -> touches(side, point))) {
            return false;
        }
        boolean inside = false;
        for (var side : outline()) {
            var a = side.from();
            var b = side.to();
            if ((a.y() > point.y()) != (b.y() > point.y())
                    && point.x() < a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private static boolean touches(Segment side, Vec2 point) {
        var along = side.to().minus(side.from());
        var on = point.minus(side.from());
        double share = (on.x() * along.x() + on.y() * along.y()) / (along.length() * along.length());
        return point.minus(side.at(Math.max(0, Math.min(1, share)))).length() <= INSIDE / 10;
    }

    /** How near the wood is beside the middle of a piece of its outline; nothing where channels leave none. */
    OptionalDouble nearness(Segment piece) {
        var beside = covers(piece.beside(INSIDE)) ? piece.beside(INSIDE) : piece.beside(-INSIDE);
        double near = nearness();
        for (int i = 0; i <= channels.size(); i++) {
            var at = sight.lifted(beside.x(), beside.y(), near - INSIDE);
            var cut = channels.stream().filter(box -> holds(box, at)).findFirst();
            if (cut.isEmpty()) {
                return Grid.less(sight.farness(placed.box()), near) ? OptionalDouble.of(near) : OptionalDouble.empty();
            }
            near = sight.farness(cut.get());
        }
        return OptionalDouble.of(near);
    }

    /** Edges within its outline: of slopes, and of cutouts and bores right through, none where they are seen from above. */
    List<Ridge> ridges() {
        if (sight.isAlong(placed.placement().through())) {
            return List.of();
        }
        var ridges = new ArrayList<Ridge>();
        for (var feature : placed.part().features()) {
            if (feature instanceof Contour contour) {
                contour.outline().corners().forEach(corner -> ridges.add(ridge(corner, false)));
            } else if (feature instanceof Pocket pocket && pocket.depth().isEmpty()) {
                ridges.addAll(within(pocket.area()));
            } else if (feature instanceof Hole hole && isBore(hole)) {
                ridges.addAll(within(hole.area()));
            }
        }
        return ridges;
    }

    /** Right through, for a thing, not for a screw. */
    private static boolean isBore(Hole hole) {
        return hole.depth().isEmpty() && hole.recess().isEmpty();
    }

    /**
     * @param nearness of its nearest point, mm
     * @param isWithin whether its own board hides it
     */
    record Ridge(Segment segment, double nearness, boolean isWithin) {}

    private List<Ridge> within(Rect area) {
        return List.of(
                ridge(new Vec2(area.x0(), area.y0()), true),
                ridge(new Vec2(area.x1(), area.y0()), true),
                ridge(new Vec2(area.x0(), area.y1()), true),
                ridge(new Vec2(area.x1(), area.y1()), true));
    }

    private Ridge ridge(Vec2 corner, boolean inCutout) {
        var a = placed.placement().apply(new Vec3(corner.x(), corner.y(), 0));
        var b = placed.placement()
                .apply(new Vec3(corner.x(), corner.y(), placed.part().thickness()));
        double near = sight.nearness(Box3.between(a, b));
        return new Ridge(new Segment(flat(a), flat(b)), near, inCutout && Grid.less(near, nearness()));
    }

    /** The outline in the part's own frame. */
    private List<Vec3> local() {
        var part = placed.part();
        var placement = placed.placement();
        if (sight.isAlong(placement.through())) {
            return part
                    .contour()
                    .map(Contour::outline)
                    .map(outline -> outline.corners())
                    .orElse(rectangle(part.length(), part.width()))
                    .stream()
                    .map(corner -> new Vec3(corner.x(), corner.y(), 0))
                    .toList();
        }
        if (sight.isAlong(placement.along())) {
            return profile(part).stream()
                    .map(corner -> new Vec3(0, corner.x(), corner.y()))
                    .toList();
        }
        return rectangle(part.length(), part.thickness()).stream()
                .map(corner -> new Vec3(corner.x(), 0, corner.y()))
                .toList();
    }

    private static List<Vec2> rectangle(double x, double y) {
        return List.of(Vec2.ZERO, new Vec2(x, 0), new Vec2(x, y), new Vec2(0, y));
    }

    /** Across the grain, y and z of the part, its bevels sawn off. */
    private static List<Vec2> profile(Part part) {
        var corners = new ArrayList<>(rectangle(part.width(), part.thickness()));
        for (var feature : part.features()) {
            if (feature instanceof Bevel bevel && !bevel.edge().isEnd()) {
                sawOff(bevel, part, corners);
            }
        }
        return corners;
    }

    private static void sawOff(Bevel bevel, Part part, List<Vec2> corners) {
        boolean far = bevel.edge() == Edge.Y1;
        boolean bench = bevel.face() == Face.BENCH;
        double y = far ? part.width() : 0;
        double z = bench ? 0 : part.thickness();
        var onFace = new Vec2(far ? y - bevel.setback() : bevel.setback(), z);
        var onEdge = new Vec2(y, bench ? bevel.depth() : z - bevel.depth());
        int index = corners.indexOf(new Vec2(y, z));
        corners.remove(index);
        // counter-clockwise from (0, 0): the corner's face comes before its edge where far and bench agree
        corners.addAll(index, far == bench ? List.of(onFace, onEdge) : List.of(onEdge, onFace));
        corners.removeIf(
                corner -> !corner.equals(onEdge) && corner.minus(onEdge).length() <= Grid.STEP);
    }

    private Vec2 seen(Vec3 point) {
        return flat(placed.placement().apply(point));
    }

    private Vec2 flat(Vec3 point) {
        var at = sight.flat(point);
        return new Vec2(at.x(), at.y());
    }

    private Box3 box(Box3 local) {
        return Box3.between(
                placed.placement().apply(local.min()), placed.placement().apply(local.max()));
    }

    private List<Segment> sides(Box3 box) {
        var rect = sight.project(box);
        var around = List.of(
                new Vec2(rect.x0(), rect.y0()),
                new Vec2(rect.x1(), rect.y0()),
                new Vec2(rect.x1(), rect.y1()),
                new Vec2(rect.x0(), rect.y1()));
        return IntStream.range(0, 4)
                .mapToObj(i -> new Segment(around.get(i), around.get((i + 1) % 4)))
                .toList();
    }

    private static boolean holds(Box3 box, Vec3 at) {
        return at.x() > box.min().x()
                && at.x() < box.max().x()
                && at.y() > box.min().y()
                && at.y() < box.max().y()
                && at.z() > box.min().z()
                && at.z() < box.max().z();
    }
}
