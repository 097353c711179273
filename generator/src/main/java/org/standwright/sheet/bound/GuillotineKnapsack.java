package org.standwright.sheet.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.PieceType;

/**
 * The most that can be cut from one board, when each piece has a value and there is no end of pieces: by the values of
 * all smaller panels, each the best piece or the best cut from edge to edge (P. Gilmore, R. Gomory, The theory and
 * computation of knapsack functions, 1966; J. Beasley, Algorithms for unconstrained two-dimensional guillotine cutting,
 * 1985). Values are whole numbers, so that nothing is rounded.
 *
 * <p>Where piece sizes have too many different sums it works on a coarser grid, with all sizes rounded down: whatever
 * fits in truth fits there too, so that its value is not below the true one. A piece thinner than the grid can't be
 * told from nothing, and has to have no value.
 */
public final class GuillotineKnapsack {
    /** Values add up to less than this on any board. */
    static final int MOST_VALUE = 1 << 29;

    private final List<PieceType> types;
    private final BoardKind board;
    private final int grid;
    private final Points lengths;
    private final Points widths;
    /** Best value of each panel, by point of its length and of its width. */
    private final int[][] best;

    private final List<List<Lying>> starting;
    private int[] values = {};

    private GuillotineKnapsack(List<PieceType> types, BoardKind board, int grid, Points lengths, Points widths) {
        this.types = List.copyOf(types);
        this.board = board;
        this.grid = grid;
        this.lengths = lengths;
        this.widths = widths;
        best = new int[lengths.count()][widths.count()];
        starting = new ArrayList<>();
        IntStream.range(0, lengths.count()).forEach(point -> starting.add(new ArrayList<>()));
        for (int type = 0; type < types.size(); type++) {
            for (boolean turned : new boolean[] {false, true}) {
                var piece = types.get(type);
                if (piece.fits(board, turned) && isSeen(type)) {
                    int length = lengths.index(piece.along(turned) / grid);
                    int width = widths.index(piece.across(turned) / grid);
                    starting.get(length).add(new Lying(type, turned, width));
                }
            }
        }
    }

    /** A piece as it may lie, by point of its width. */
    private record Lying(int type, boolean turned, int width) {}

    /** On the true sizes; empty if there are more than so many places to cut at in one direction. */
    public static Optional<GuillotineKnapsack> exact(List<PieceType> types, BoardKind board, int mostPoints) {
        return onGrid(types, board, 1, mostPoints);
    }

    /** With sizes rounded down so far that the board's longer side has so many grid steps at most. */
    public static GuillotineKnapsack coarse(List<PieceType> types, BoardKind board, int steps) {
        int grid = Math.max(board.length(), board.width()) / steps + 1;
        return onGrid(types, board, grid, steps + 1).orElseThrow();
    }

    private static Optional<GuillotineKnapsack> onGrid(
            List<PieceType> types, BoardKind board, int grid, int mostPoints) {
        var lengths = Points.of(board.length() / grid, sizes(types, board, grid, true), mostPoints);
        var widths = Points.of(board.width() / grid, sizes(types, board, grid, false), mostPoints);
        return lengths.isPresent() && widths.isPresent()
                ? Optional.of(new GuillotineKnapsack(types, board, grid, lengths.get(), widths.get()))
                : Optional.empty();
    }

    private static int[] sizes(List<PieceType> types, BoardKind board, int grid, boolean along) {
        return types.stream()
                .flatMapToInt(type -> IntStream.of(0, 1)
                        .filter(turned -> type.fits(board, turned == 1))
                        .map(turned -> (along ? type.along(turned == 1) : type.across(turned == 1)) / grid))
                .filter(size -> size > 0)
                .distinct()
                .toArray();
    }

    /** Whether sizes are true ones. */
    public boolean isExact() {
        return grid == 1;
    }

    /** Whether the piece is thick enough for the grid, so that it may have a value. */
    public boolean isSeen(int type) {
        return Math.min(types.get(type).length(), types.get(type).width()) >= grid;
    }

    /** Additions that filling the table takes, those that the processor makes many of at once counted as one. */
    public long work() {
        return lengths.cuts() * widths.count() / 8 + widths.cuts() * lengths.count();
    }

    /**
     * Values by type as whole numbers that can't overflow, rounded down; 0 for pieces that the grid doesn't see.
     *
     * @param scale {@link #scale} or less
     */
    int[] scaled(double[] prices, double scale) {
        int[] scaled = new int[prices.length];
        for (int type = 0; type < scaled.length; type++) {
            scaled[type] = isSeen(type) ? (int) Math.max(0, Math.floor(prices[type] * scale)) : 0;
        }
        return scaled;
    }

    /** The largest factor at which no board full of the piece that is dearest for its size overflows. */
    double scale(double[] prices) {
        double area = (double) (board.length() / grid) * (board.width() / grid);
        double most = 1e-300;
        for (int type = 0; type < prices.length; type++) {
            if (isSeen(type)) {
                double own = (double) (types.get(type).length() / grid)
                        * (types.get(type).width() / grid);
                most = Math.max(most, prices[type] * Math.max(1, area / own));
            }
        }
        return MOST_VALUE / most;
    }

    /**
     * Works out the best value for these values of the types.
     *
     * @return not below that of any pattern
     */
    public int fill(int[] valuesByType) {
        values = valuesByType.clone();
        for (int x = 1; x < best.length; x++) {
            int[] row = best[x];
            System.arraycopy(best[x - 1], 0, row, 0, row.length);
            for (var piece : starting.get(x)) {
                row[piece.width] = Math.max(row[piece.width], values[piece.type]);
            }
            int[] remains = lengths.remains(x);
            for (int cut = 0; cut < remains.length; cut++) {
                divide(row, best[cut + 1], best[remains[cut]]);
            }
            divideAcross(row);
        }
        return best[best.length - 1][best[0].length - 1];
    }

    private static void divide(int[] row, int[] one, int[] other) {
        for (int y = 0; y < row.length; y++) {
            row[y] = Math.max(row[y], one[y] + other[y]);
        }
    }

    private void divideAcross(int[] row) {
        for (int y = 1; y < row.length; y++) {
            int most = Math.max(row[y], row[y - 1]);
            int[] remains = widths.remains(y);
            for (int cut = 0; cut < remains.length; cut++) {
                most = Math.max(most, row[cut + 1] + row[remains[cut]]);
            }
            row[y] = most;
        }
    }

    /** Pieces of each type in the best pattern, on the grid. */
    public int[] counts() {
        int[] counts = new int[types.size()];
        block(best.length - 1, best[0].length - 1).ifPresent(block -> block.count(counts));
        return counts;
    }

    /**
     * The best pattern in true sizes, without pieces of which more are used than there are or that the grid let
     * overlap.
     *
     * @param available of each type
     */
    public CutNode pattern(int[] available) {
        return block(best.length - 1, best[0].length - 1)
                .map(block -> block.lay(board.length(), board.width(), Arrays.copyOf(available, available.length)))
                .orElseGet(() -> new CutNode.Rest(board.length(), board.width()));
    }

    /** How the value of a panel comes about; empty if it has none. */
    private Optional<Block> block(int length, int width) {
        int x = length;
        int y = width;
        int value = best[x][y];
        if (value == 0) {
            return Optional.empty();
        }
        while (best[x - 1][y] == value) {
            x--;
        }
        while (best[x][y - 1] == value) {
            y--;
        }
        for (var piece : starting.get(x)) {
            if (piece.width == y && values[piece.type] == value) {
                return Optional.of(new Block.Single(types.get(piece.type), piece.type, piece.turned));
            }
        }
        int[] ends = lengths.remains(x);
        for (int cut = 0; cut < ends.length; cut++) {
            if (best[cut + 1][y] + best[ends[cut]][y] == value) {
                return Block.pair(Direction.CROSSCUT, block(cut + 1, y), block(ends[cut], y));
            }
        }
        ends = widths.remains(y);
        for (int cut = 0; cut < ends.length; cut++) {
            if (best[x][cut + 1] + best[x][ends[cut]] == value) {
                return Block.pair(Direction.RIP, block(x, cut + 1), block(x, ends[cut]));
            }
        }
        throw new IllegalStateException("a panel's value comes from nowhere.");
    }
}
