package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.drawing.figure.Sight;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;

/**
 * Edges of boards as they are seen from one side, each drawn once: what a nearer board hides is told apart, and an edge
 * that lies on another is left out. A nearer board is taken to be nearer all over, enough for boards square to each other
 * that are let into each other at most.
 */
record SeenBoards(List<Segment> visible, List<Segment> hidden) {
    static SeenBoards of(List<PlacedPart> boards, Sight sight) {
        return new Sorting(boards.stream()
                        .map(board -> new Silhouette(board, sight))
                        .toList())
                .sorted();
    }

    private record Sorting(List<Silhouette> boards, List<Segment> visible, List<Segment> hidden) {
        Sorting(List<Silhouette> boards) {
            this(boards, new ArrayList<>(), new ArrayList<>());
        }

        SeenBoards sorted() {
            for (var board : boards) {
                board.outline().forEach(side -> outline(board, side));
                for (var ridge : board.ridges()) {
                    if (ridge.isWithin()) {
                        hidden.add(ridge.segment());
                    } else {
                        sort(ridge.segment(), ridge.nearness(), board);
                    }
                }
            }
            var seen = eachOnce(visible, List.of());
            return new SeenBoards(seen, eachOnce(hidden, seen));
        }

        private void outline(Silhouette board, Segment side) {
            for (var piece : side.cutBy(board.rims())) {
                board.nearness(piece).ifPresent(near -> sort(piece, near, board));
            }
        }

        private void sort(Segment side, double near, Silhouette board) {
            var others = boards.stream()
                    .filter(other -> other != board && Grid.less(near, other.nearness()))
                    .toList();
            var rims =
                    others.stream().flatMap(other -> other.outline().stream()).toList();
            for (var piece : side.cutBy(rims)) {
                (isHidden(piece.middle(), others) ? hidden : visible).add(piece);
            }
        }

        private static boolean isHidden(Vec2 point, List<Silhouette> nearer) {
            return nearer.stream().anyMatch(other -> other.covers(point));
        }

        private static List<Segment> eachOnce(List<Segment> segments, List<Segment> drawn) {
            var kept = new ArrayList<Segment>();
            for (var segment : segments) {
                var before = new ArrayList<>(drawn);
                before.addAll(kept);
                kept.addAll(segment.without(before));
            }
            return List.copyOf(kept);
        }
    }
}
