package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.List;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut.Purpose;
import org.standwright.sheet.Cut.Tool;
import org.standwright.sheet.PlacedPiece;

/** Saws one board down to its goal: steps, pieces and lefts at their places. */
final class BoardSawing {
    private static final Rim ROUGH = new Rim(0, Rim.Kind.ROUGH);
    /** What can be trimmed before all else, as little as possible first. */
    private static final List<List<Edge>> EDGES = List.of(
            List.of(),
            List.of(Edge.Y0, Edge.Y1),
            List.of(Edge.X0, Edge.X1),
            List.of(Edge.Y0, Edge.Y1, Edge.X0, Edge.X1));

    private final Blades blades;
    private final Reach reach;
    private final Bench bench;
    private final List<PlacedPiece> pieces = new ArrayList<>();
    private final List<Area> lefts = new ArrayList<>();

    BoardSawing(Blades blades, Bench bench) {
        this.blades = blades;
        this.bench = bench;
        this.reach = new Reach(blades);
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
        return bench.cut(before, List.of(goal), panel, strip, tool, purpose, edge.opposite());
    }

    private int kerf(Tool tool) {
        return tool == Tool.SAW ? blades.kerf() : blades.handKerf();
    }

    /** All parallel cuts first, then each strip by itself. */
    private void divide(Goal.Strips strips, Area at, Rims rims, int before) {
        var seams = reach.seams(strips, rims);
        var each = reach.rims(strips, rims, seams);
        var places = strips.places(at);
        var freedBy = new ArrayList<Integer>();
        var panel = rims.around(at);
        var low = rims.at(strips.low());
        int last = before;
        for (int i = 0; i < seams.size(); i++) {
            for (var cut : seams.get(i).cuts()) {
                boolean frees = freedBy.size() == i;
                var parted =
                        strips.nodes().subList(frees ? i : i + 1, strips.nodes().size());
                var kerf = strips.kerf(panel, places.get(i), cut);
                var fence = fence(strips, low, rims, strips.above(panel, kerf).size() == 0);
                last = bench.cut(last, parted, panel, kerf, tool(strips), Purpose.DIVIDE, fence);
                if (frees) {
                    freedBy.add(last);
                } else {
                    leave(strips.below(panel, kerf));
                }
                panel = strips.above(panel, kerf);
                low = ROUGH;
            }
            low = each.get(i + 1).at(strips.low());
        }
        freedBy.add(last);
        for (int i = 0; i < places.size(); i++) {
            saw(strips.nodes().get(i), places.get(i), each.get(i), freedBy.get(i));
        }
    }

    private Tool tool(Goal.Strips strips) {
        return reach.isByHand(strips) && blades.hand() ? Tool.BREAK_DOWN_SAW : Tool.SAW;
    }

    /** The near edge, unless it is rough and the far one is not. */
    private static Edge fence(Goal.Strips strips, Rim low, Rims rims, boolean runsOff) {
        return low.isRough() && !rims.at(strips.high()).isRough() && !runsOff ? strips.high() : strips.low();
    }
}
