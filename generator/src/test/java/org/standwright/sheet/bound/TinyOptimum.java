package org.standwright.sheet.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * The least cost of a job of some seven pieces, by trying everything: which smallest rectangles a set of pieces can be
 * cut from with cuts from edge to edge, and which sets share a board.
 */
final class TinyOptimum {
    static final long IMPOSSIBLE = Long.MAX_VALUE;

    private final List<BoardKind> kinds;
    private final List<PieceType> pieces = new ArrayList<>();
    /** By set of pieces, as bits. */
    private final List<List<int[]>> shapes = new ArrayList<>();

    private long best = IMPOSSIBLE;

    private TinyOptimum(PackingJob job) {
        kinds = job.kinds();
        job.types().forEach(type -> {
            for (int i = 0; i < type.count(); i++) {
                pieces.add(type);
            }
        });
        shapes.add(List.of());
        for (int set = 1; set < 1 << pieces.size(); set++) {
            shapes.add(shapesOf(set));
        }
    }

    static long cost(PackingJob job) {
        var tiny = new TinyOptimum(job);
        tiny.choose(
                (1 << tiny.pieces.size()) - 1,
                tiny.kinds.stream().mapToInt(BoardKind::count).toArray(),
                0);
        return tiny.best;
    }

    private List<int[]> shapesOf(int set) {
        var found = new ArrayList<int[]>();
        if (Integer.bitCount(set) == 1) {
            var piece = pieces.get(Integer.numberOfTrailingZeros(set));
            for (boolean turned : new boolean[] {false, true}) {
                if (piece.allows(turned)) {
                    add(found, piece.along(turned), piece.across(turned));
                }
            }
        }
        for (int one = set - 1 & set; one > 0; one = one - 1 & set) {
            for (var a : shapes.get(one)) {
                for (var b : shapes.get(set ^ one)) {
                    add(found, a[0] + b[0], Math.max(a[1], b[1]));
                    add(found, Math.max(a[0], b[0]), a[1] + b[1]);
                }
            }
        }
        return found;
    }

    private static void add(List<int[]> shapes, int length, int width) {
        if (shapes.stream().noneMatch(other -> other[0] <= length && other[1] <= width)) {
            shapes.removeIf(other -> other[0] >= length && other[1] >= width);
            shapes.add(new int[] {length, width});
        }
    }

    /** The first piece left goes on a board of each kind with each set of others. */
    private void choose(int left, int[] boards, long cost) {
        if (cost >= best) {
            return;
        }
        if (left == 0) {
            best = cost;
            return;
        }
        int first = Integer.lowestOneBit(left);
        for (int kind = 0; kind < boards.length; kind++) {
            if (boards[kind] == 0) {
                continue;
            }
            int[] fewer = Arrays.copyOf(boards, boards.length);
            fewer[kind]--;
            int others = left ^ first;
            for (int with = others; ; with = with - 1 & others) {
                if (fits(with | first, kinds.get(kind))) {
                    choose(others ^ with, fewer, cost + kinds.get(kind).cost());
                }
                if (with == 0) {
                    break;
                }
            }
        }
    }

    private boolean fits(int set, BoardKind kind) {
        for (int i = 0; i < pieces.size(); i++) {
            if ((set >> i & 1) == 1 && pieces.get(i).mating() && !kind.mating()) {
                return false;
            }
        }
        return shapes.get(set).stream().anyMatch(shape -> shape[0] <= kind.length() && shape[1] <= kind.width());
    }
}
