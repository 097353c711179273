package org.standwright.sheet.bound;

import java.util.List;
import java.util.Optional;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.PieceType;

/** Pieces side by side and end to end, in as little room as they take in true sizes. */
sealed interface Block {
    int length();

    int width();

    void count(int[] counts);

    /** As a panel of this size; what it has no room for, or is not available, is left out. */
    CutNode lay(int length, int width, int[] available);

    static Optional<Block> pair(Direction direction, Optional<Block> one, Optional<Block> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() ? one : other;
        }
        return Optional.of(new Pair(direction, one.get(), other.get()));
    }

    record Single(PieceType piece, int type, boolean turned) implements Block {
        @Override
        public int length() {
            return piece.along(turned);
        }

        @Override
        public int width() {
            return piece.across(turned);
        }

        @Override
        public void count(int[] counts) {
            counts[type]++;
        }

        @Override
        public CutNode lay(int length, int width, int[] available) {
            if (length < length() || width < width() || available[type] == 0) {
                return new CutNode.Rest(length, width);
            }
            available[type]--;
            return Laid.in(length, width, new CutNode.Piece(type, length(), width(), turned));
        }
    }

    record Pair(Direction direction, Block one, Block other, int length, int width) implements Block {
        Pair(Direction direction, Block one, Block other) {
            this(
                    direction,
                    one,
                    other,
                    direction == Direction.CROSSCUT
                            ? one.length() + other.length()
                            : Math.max(one.length(), other.length()),
                    direction == Direction.RIP ? one.width() + other.width() : Math.max(one.width(), other.width()));
        }

        @Override
        public void count(int[] counts) {
            one.count(counts);
            other.count(counts);
        }

        @Override
        public CutNode lay(int inLength, int inWidth, int[] available) {
            boolean crosscut = direction == Direction.CROSSCUT;
            int room = crosscut ? inLength : inWidth;
            int first = Math.min(crosscut ? one.length() : one.width(), room);
            var laid = crosscut ? one.lay(first, inWidth, available) : one.lay(inLength, first, available);
            if (laid instanceof CutNode.Rest) {
                return other.lay(inLength, inWidth, available);
            }
            if (first == room) {
                return laid;
            }
            var rest = crosscut
                    ? other.lay(inLength - first, inWidth, available)
                    : other.lay(inLength, inWidth - first, available);
            return CutNode.split(direction, inLength, inWidth, List.of(laid, rest));
        }
    }
}
