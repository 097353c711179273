package org.standwright.sheet.job;

import java.util.ArrayList;
import java.util.List;
import org.standwright.sheet.job.PieceType.Ways;

/** A packing job said in one line: {@code Pack.boards(100, 100).pieces(34, 34, 9).job()}. Sizes are plain units. */
public record Pack(List<PieceType> types, List<BoardKind> kinds, CutRules rules, Ways ways) {
    /** As many boards as it takes, at a cost of 1 each; pieces may be turned and touch. */
    public static Pack boards(int length, int width) {
        var kind = new BoardKind(length, width, BoardKind.UNLIMITED, 1, true);
        return new Pack(List.of(), List.of(kind), CutRules.free(0), Ways.EITHER);
    }

    /** What one board of the first kind costs. */
    public Pack cost(long cost) {
        var first = kinds.get(0);
        var changed = new ArrayList<>(kinds);
        changed.set(0, new BoardKind(first.length(), first.width(), first.count(), cost, first.mating()));
        return new Pack(types, changed, rules, ways);
    }

    /** One more kind of board. */
    public Pack also(int length, int width, int count, long cost) {
        var more = new ArrayList<>(kinds);
        more.add(new BoardKind(length, width, count, cost, true));
        return new Pack(types, more, rules, ways);
    }

    /** Pieces said after this keep their length along the boards'. */
    public Pack straight() {
        return new Pack(types, kinds, rules, Ways.STRAIGHT);
    }

    public Pack rules(CutRules other) {
        return new Pack(types, kinds, other, ways);
    }

    public Pack pieces(int length, int width, int count) {
        var more = new ArrayList<>(types);
        more.add(new PieceType(length, width, count, ways, false));
        return new Pack(more, kinds, rules, ways);
    }

    public PackingJob job() {
        return new PackingJob(types, kinds, rules);
    }
}
