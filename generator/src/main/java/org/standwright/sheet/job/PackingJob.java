package org.standwright.sheet.job;

import java.util.List;

/**
 * What to cut from which boards, with kerf and trim taken out of the picture: lay the types on boards so that they do
 * not overlap, every cut runs from edge to edge, and the boards cost as little as they can. With the kerf added once to
 * every piece and once to every trimmed board, pieces may touch; it is exact, since a cut divides a board a into
 * b + kerf + c, and (b + kerf) + (c + kerf) = a + kerf.
 */
public record PackingJob(List<PieceType> types, List<BoardKind> kinds, CutRules rules) {
    public PackingJob {
        types = List.copyOf(types);
        kinds = List.copyOf(kinds);
    }

    public int pieceCount() {
        return types.stream().mapToInt(PieceType::count).reduce(0, Math::addExact);
    }

    /** Of all pieces, enlarged by the kerf. */
    public long pieceArea() {
        return types.stream().mapToLong(type -> type.area() * type.count()).sum();
    }
}
