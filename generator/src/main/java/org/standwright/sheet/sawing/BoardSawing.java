package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.Cut.Purpose;
import org.standwright.sheet.Cut.Tool;
import org.standwright.sheet.PlacedPiece;

/** Saws one board down to its goal: steps, pieces and lefts at their places. */
final class BoardSawing {
    private static final List<List<Edge>> EDGES = List.of(
            List.of(),
            List.of(Edge.Y0, Edge.Y1),
            List.of(Edge.X0, Edge.X1),
            List.of(Edge.Y0, Edge.Y1, Edge.X0, Edge.X1));

    private final int sheet;
    private final Blades blades;
    private final Set<String> later;
    private final Reach reach;
    private final List<Step> steps;
    private final List<PlacedPiece> pieces = new ArrayList<>();
    private final List<Area> lefts = new ArrayList<>();

    /**
     * @param sheet index of the board
     * @param later labels of the pieces that wait
     * @param steps of the boards before; takes those of this one
     */
    BoardSawing(int sheet, Blades blades, Set<String> later, List<Step> steps) {
        this.sheet = sheet;
        this.blades = blades;
        this.later = later;
        this.reach = new Reach(blades);
        this.steps = steps;
    }

    List<PlacedPiece> pieces() {
        return pieces;
    }

    List<Area> lefts() {
        return lefts;
    }

    /** @param trimmed where the goal lies on the board */
    void sawBoard(Goal goal, Area board, Area trimmed) {
        var rims = new Rims(
                factory(trimmed.x() - board.x()),
                factory(board.endX() - trimmed.endX()),
                factory(trimmed.y() - board.y()),
                factory(board.endY() - trimmed.endY()));
        int before = Step.NONE;
        for (var edge : trimmedAtOnce(goal, rims)) {
            var tool = blades.hand() ? Tool.BREAK_DOWN_SAW : Tool.SAW;
            before = straighten(edge, goal, trimmed, rims, tool, before);
            rims = rims.with(edge, Rim.SAWN);
        }
        saw(goal, trimmed, rims, before);
    }

    private static Rim factory(int over) {
        return new Rim(over, Rim.Kind.FACTORY);
    }

    /** The edges that can't wait for a smaller panel, and are too long for the saw: as few as will do. */
    private List<Edge> trimmedAtOnce(Goal goal, Rims rims) {
        return EDGES.stream()
                .map(edges ->
                        edges.stream().filter(edge -> rims.at(edge).over() > 0).toList())
                .filter(edges -> reach.isTrue(goal, without(rims, edges)))
                .findFirst()
                .orElseThrow();
    }

    private static Rims without(Rims rims, List<Edge> edges) {
        var left = rims;
        for (var edge : edges) {
            left = left.with(edge, Rim.SAWN);
        }
        return left;
    }

    private void saw(Goal goal, Area at, Rims from, int after) {
        if (goal instanceof Goal.Left) {
            leave(from.around(at));
            return;
        }
        var rims = from;
        int before = after;
        for (var edge = reach.next(goal, rims); edge.isPresent(); edge = reach.next(goal, rims)) {
            before = straighten(edge.get(), goal, at, rims, Tool.SAW, before);
            rims = rims.with(edge.get(), Rim.SAWN);
        }
        if (goal instanceof Goal.Item item) {
            pieces.add(item.piece().moved(at.x(), at.y()));
        } else if (goal instanceof Goal.Strips strips) {
            divide(strips, at, rims, before);
        }
    }

    private void leave(Area left) {
        if (left.length() > 0 && left.width() > 0) {
            lefts.add(left);
        }
    }

    /** Takes off what stands out over an edge; the blade runs off where that is less than a kerf. */
    private int straighten(Edge edge, Goal goal, Area at, Rims rims, Tool tool, int before) {
        var rim = rims.at(edge);
        var panel = rims.around(at);
        int width = Math.min(kerf(tool), rim.over());
        var strip = switch (edge) {
            case Y0 -> new Area(panel.x(), at.y() - width, panel.length(), width);
            case Y1 -> new Area(panel.x(), at.endY(), panel.length(), width);
            case X0 -> new Area(at.x() - width, panel.y(), width, panel.width());
            case X1 -> new Area(at.endX(), panel.y(), width, panel.width());
        };
        var purpose = rim.kind() == Rim.Kind.FACTORY ? Purpose.TRIM : Purpose.RECUT;
        return step(before, List.of(goal), panel, strip, tool, purpose, Rims.opposite(edge));
    }

    private int kerf(Tool tool) {
        return tool == Tool.SAW ? blades.kerf() : blades.handKerf();
    }

    /** All parallel cuts first, then each strip by itself. */
    private void divide(Goal.Strips strips, Area at, Rims rims, int before) {
        var seams = reach.seams(strips, rims);
        var each = reach.rims(strips, rims, seams);
        var places = places(strips, at);
        var after = new ArrayList<Integer>();
        var panel = rims.around(at);
        var low = rims.at(strips.low());
        int last = before;
        for (int i = 0; i < seams.size(); i++) {
            var parted = strips.nodes().subList(i, strips.nodes().size());
            for (var cut : seams.get(i).cuts()) {
                var strip = strip(strips.direction(), places.get(i), panel, cut);
                last = step(
                        last,
                        parted,
                        panel,
                        strip,
                        tool(strips),
                        Purpose.DIVIDE,
                        fence(strips, low, rims, panel, strip));
                if (after.size() == i) {
                    after.add(last);
                    parted = parted.subList(1, parted.size());
                } else {
                    leave(before(strips.direction(), panel, strip));
                }
                panel = beyond(strips.direction(), panel, strip);
                low = new Rim(0, Rim.Kind.ROUGH);
            }
            low = each.get(i + 1).at(strips.low());
        }
        after.add(last);
        for (int i = 0; i < places.size(); i++) {
            saw(strips.nodes().get(i), places.get(i), each.get(i), after.get(i));
        }
    }

    private Tool tool(Goal.Strips strips) {
        return reach.isByHand(strips) && blades.hand() ? Tool.BREAK_DOWN_SAW : Tool.SAW;
    }

    private static List<Area> places(Goal.Strips strips, Area at) {
        boolean rip = strips.direction() == Direction.RIP;
        var places = new ArrayList<Area>();
        int from = 0;
        for (var node : strips.nodes()) {
            places.add(
                    new Area(rip ? at.x() : at.x() + from, rip ? at.y() + from : at.y(), node.length(), node.width()));
            from += node.extent(strips.direction()) + strips.gap();
        }
        return places;
    }

    private static Area strip(Direction direction, Area place, Area panel, Seam.Cut cut) {
        int width = cut.to() - cut.from();
        return direction == Direction.RIP
                ? new Area(panel.x(), place.endY() + cut.from(), panel.length(), width)
                : new Area(place.endX() + cut.from(), panel.y(), width, panel.width());
    }

    private static Area before(Direction direction, Area panel, Area strip) {
        return direction == Direction.RIP
                ? new Area(panel.x(), panel.y(), panel.length(), strip.y() - panel.y())
                : new Area(panel.x(), panel.y(), strip.x() - panel.x(), panel.width());
    }

    private static Area beyond(Direction direction, Area panel, Area strip) {
        return direction == Direction.RIP
                ? new Area(panel.x(), strip.endY(), panel.length(), panel.endY() - strip.endY())
                : new Area(strip.endX(), panel.y(), panel.endX() - strip.endX(), panel.width());
    }

    /** The near edge, unless it is rough and the far one is not. */
    private static Edge fence(Goal.Strips strips, Rim low, Rims rims, Area panel, Area strip) {
        boolean runsOff =
                strips.direction() == Direction.RIP ? strip.endY() == panel.endY() : strip.endX() == panel.endX();
        return low.isRough() && !rims.at(strips.high()).isRough() && !runsOff ? strips.high() : strips.low();
    }

    private int step(int before, List<Goal> parted, Area panel, Area strip, Tool tool, Purpose purpose, Edge fence) {
        int setting = switch (fence) {
            case Y0 -> strip.y() - panel.y();
            case Y1 -> panel.endY() - strip.endY();
            case X0 -> strip.x() - panel.x();
            case X1 -> panel.endX() - strip.endX();
        };
        steps.add(new Step(
                sheet,
                before,
                parted.stream().allMatch(this::waits),
                Rims.along(fence),
                strip,
                tool,
                purpose,
                fence,
                setting));
        return steps.size() - 1;
    }

    /** What nobody asked for has no say in it. */
    private boolean waits(Goal goal) {
        if (goal instanceof Goal.Item item) {
            return item.piece().parts().stream().allMatch(part -> later.contains(part.label()));
        }
        return !(goal instanceof Goal.Strips strips) || strips.nodes().stream().allMatch(this::waits);
    }
}
