package org.standwright.sheet.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PieceType;

/**
 * How far a piece reaches over a board in one position, 0 where it fits, units.
 *
 * @param kind index of the board's kind
 */
record Overhang(int kind, int length, int width) {

    private static Overhang of(PieceType type, List<BoardKind> kinds, int kind, boolean turned) {
        return new Overhang(
                kind,
                Math.max(0, type.along(turned) - kinds.get(kind).length()),
                Math.max(0, type.across(turned) - kinds.get(kind).width()));
    }

    /** Over the board that it reaches over least, in the better position that its grain allows. */
    static Overhang least(PieceType type, List<BoardKind> kinds) {
        return IntStream.range(0, kinds.size())
                .boxed()
                .flatMap(kind ->
                        Stream.of(false, true).filter(type::allows).map(turned -> of(type, kinds, kind, turned)))
                .min(Comparator.comparingLong(Overhang::sum))
                .orElseThrow();
    }

    /** Whether it would fit some board turned, were it not for its grain. */
    static boolean fitsTurned(PieceType type, List<BoardKind> kinds) {
        return !type.allows(true)
                && IntStream.range(0, kinds.size())
                        .anyMatch(kind -> of(type, kinds, kind, true).isNone());
    }

    boolean isNone() {
        return sum() == 0;
    }

    private long sum() {
        return (long) length + width;
    }
}
