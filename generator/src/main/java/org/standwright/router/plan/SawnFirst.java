package org.standwright.router.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.router.plan.places.FilledBoard;
import org.standwright.router.plan.places.Place;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.lane.ScarceStockException;
import org.standwright.sheet.search.Search;

/** A first answer: what a saw whose kerf is the spacing would do, its trees of cuts told as places. */
final class SawnFirst {
    private final List<Place> places = new ArrayList<>();

    private SawnFirst() {}

    /** None where the boards do not suffice for cuts from edge to edge. */
    static List<FilledBoard> of(PackingJob job, long bound, Budget budget) {
        try {
            return Search.run(job, bound, budget, better -> {}).answers().get(0).boards().stream()
                    .map(SawnFirst::filled)
                    .toList();
        } catch (ScarceStockException e) {
            return List.of();
        }
    }

    private static FilledBoard filled(CutTree tree) {
        var sawn = new SawnFirst();
        sawn.gather(tree.root(), 0, 0);
        return new FilledBoard(tree.kind(), sawn.places, 0);
    }

    private void gather(CutNode node, int x, int y) {
        if (node instanceof CutNode.Piece piece) {
            places.add(new Place(piece.type(), x, y, piece.turned()));
        } else if (node instanceof CutNode.Split split) {
            boolean rip = split.direction() == Direction.RIP;
            int place = 0;
            for (var inner : restLast(split.nodes())) {
                gather(inner, rip ? x : x + place, rip ? y + place : y);
                place += CutNode.extent(inner, split.direction());
            }
        }
    }

    private static List<CutNode> restLast(List<CutNode> nodes) {
        return nodes.stream()
                .sorted(Comparator.comparing(CutNode.Rest.class::isInstance))
                .toList();
    }
}
