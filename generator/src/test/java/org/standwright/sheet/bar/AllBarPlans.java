package org.standwright.sheet.bar;

import java.util.ArrayList;
import java.util.List;

/** The least cost of a few pieces by trying each of them on each open bar and on each new one. */
final class AllBarPlans {
    private final List<Integer> pieces = new ArrayList<>();
    private final List<BarKind> kinds;
    private final int kerf;
    private long best = Long.MAX_VALUE;

    private AllBarPlans(List<BarKind> kinds, int kerf) {
        this.kinds = kinds;
        this.kerf = kerf;
    }

    static long cheapest(List<BarPiece> pieces, List<BarKind> kinds, int kerf) {
        var all = new AllBarPlans(kinds, kerf);
        for (var piece : pieces) {
            for (int i = 0; i < piece.count(); i++) {
                all.pieces.add(piece.length());
            }
        }
        all.place(0, new ArrayList<>(), new int[kinds.size()], 0);
        return all.best;
    }

    /** @param open where the next piece would start on each open bar, and how long the bar is */
    private void place(int piece, List<int[]> open, int[] used, long cost) {
        if (cost >= best) {
            return;
        }
        if (piece == pieces.size()) {
            best = cost;
            return;
        }
        int length = pieces.get(piece);
        for (var bar : List.copyOf(open)) {
            if (bar[0] + length <= bar[1]) {
                bar[0] += length + kerf;
                place(piece + 1, open, used, cost);
                bar[0] -= length + kerf;
            }
        }
        for (int kind = 0; kind < used.length; kind++) {
            var bar = kinds.get(kind);
            if (used[kind] < bar.count() && length <= bar.length()) {
                used[kind]++;
                open.add(new int[] {length + kerf, bar.length()});
                place(piece + 1, open, used, cost + bar.cost());
                open.remove(open.size() - 1);
                used[kind]--;
            }
        }
    }
}
