package org.standwright.sheet.bar;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.job.PieceType.Ways;

/**
 * The question in numbers, with the kerf taken out of the picture: pieces l side by side take sum(l + kerf) - kerf, so
 * that they fit a bar L just when sum(l + kerf) is L + kerf at most; a rest thinner than the kerf turns to dust.
 *
 * @param lengths of the types, the kerf added, the longest first
 * @param counts of the types
 * @param bars length of each kind, the kerf added
 * @param available bars of each kind
 * @param costs of each kind
 */
record BarJob(int[] lengths, int[] counts, int[] bars, int[] available, long[] costs) {
    static BarJob of(List<BarPiece> longestFirst, List<BarKind> kinds, int kerf, long unit) {
        return new BarJob(
                longestFirst.stream()
                        .mapToInt(piece -> Math.addExact(piece.length(), kerf))
                        .toArray(),
                longestFirst.stream().mapToInt(BarPiece::count).toArray(),
                kinds.stream()
                        .mapToInt(kind -> Math.addExact(kind.length(), kerf))
                        .toArray(),
                kinds.stream().mapToInt(BarKind::count).toArray(),
                kinds.stream().mapToLong(kind -> kind.cost() / unit).toArray());
    }

    /** The same question asked of boards: all as wide as each other. */
    PackingJob asBoards() {
        int width = IntStream.of(bars).max().orElseThrow();
        return new PackingJob(
                IntStream.range(0, lengths.length)
                        .mapToObj(type -> new PieceType(lengths[type], width, counts[type], Ways.STRAIGHT, false))
                        .toList(),
                IntStream.range(0, bars.length)
                        .mapToObj(kind -> new BoardKind(bars[kind], width, available[kind], costs[kind], true))
                        .toList(),
                CutRules.free(0));
    }

    /** Length that the pieces take. */
    long taken(int[] pieces) {
        long taken = 0;
        for (int type = 0; type < pieces.length; type++) {
            taken += (long) pieces[type] * lengths[type];
        }
        return taken;
    }
}
