package org.standwright.sheet.bound;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.PieceType;

/**
 * How far each piece can reach in one direction of the board.
 *
 * @param straight of each type as it lies straight; 0 where it may not
 * @param turned of each type as it lies turned; 0 where it may not
 * @param counts of each type
 */
record Sizes(int[] straight, int[] turned, int[] counts) {
    static Sizes alongLength(List<PieceType> types, boolean[] straight, boolean[] turned) {
        return new Sizes(
                sides(types, straight, PieceType::length), sides(types, turned, PieceType::width), counts(types));
    }

    static Sizes alongWidth(List<PieceType> types, boolean[] straight, boolean[] turned) {
        return new Sizes(
                sides(types, straight, PieceType::width), sides(types, turned, PieceType::length), counts(types));
    }

    private static int[] counts(List<PieceType> types) {
        return types.stream().mapToInt(PieceType::count).toArray();
    }

    private static int[] sides(
            List<PieceType> types, boolean[] allowed, java.util.function.ToIntFunction<PieceType> side) {
        return IntStream.range(0, types.size())
                .map(i -> allowed[i] ? side.applyAsInt(types.get(i)) : 0)
                .toArray();
    }

    int[] distinct() {
        return IntStream.concat(Arrays.stream(straight), Arrays.stream(turned))
                .filter(size -> size > 0)
                .distinct()
                .toArray();
    }

    /** The smaller of a type's two sizes that is in this range; 0 for none. */
    int smallest(int type, long from, long to) {
        int one = in(straight[type], from, to);
        int other = in(turned[type], from, to);
        return one == 0 ? other : other == 0 ? one : Math.min(one, other);
    }

    private static int in(int size, long from, long to) {
        return size >= from && size <= to ? size : 0;
    }
}
