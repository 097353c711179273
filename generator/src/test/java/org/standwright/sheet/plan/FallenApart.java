package org.standwright.sheet.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.standwright.sheet.Area;
import org.standwright.sheet.PlannedSheet;

/**
 * What lies on the bench when every kerf strip is taken out of a board: the connected remains, found by flooding the
 * grid of all edges. Knows no cutting order and no planner; needs a kerf wider than 0.
 */
public final class FallenApart {
    private final int[] xs;
    private final int[] ys;
    private final boolean[][] gone;

    private FallenApart(Area board, PlannedSheet sheet) {
        var edgesX = new TreeSet<>(List.of(board.x(), board.x() + board.length()));
        var edgesY = new TreeSet<>(List.of(board.y(), board.y() + board.width()));
        for (var cut : sheet.cuts()) {
            edgesX.addAll(List.of(cut.kerf().x(), cut.kerf().x() + cut.kerf().length()));
            edgesY.addAll(List.of(cut.kerf().y(), cut.kerf().y() + cut.kerf().width()));
        }
        this.xs = edgesX.stream().mapToInt(x -> x).toArray();
        this.ys = edgesY.stream().mapToInt(y -> y).toArray();
        this.gone = new boolean[xs.length - 1][ys.length - 1];
        sheet.cuts().forEach(cut -> remove(cut.kerf()));
    }

    /** Bounding boxes of the remains; a remain that is no rectangle throws. */
    public static List<Area> of(Area board, PlannedSheet sheet) {
        var apart = new FallenApart(board, sheet);
        var remains = new ArrayList<Area>();
        for (int i = 0; i < apart.gone.length; i++) {
            for (int j = 0; j < apart.gone[i].length; j++) {
                if (!apart.gone[i][j]) {
                    remains.add(apart.flood(i, j));
                }
            }
        }
        return remains;
    }

    private void remove(Area strip) {
        for (int i = 0; i < gone.length; i++) {
            for (int j = 0; j < gone[i].length; j++) {
                if (xs[i] >= strip.x()
                        && xs[i] < strip.x() + strip.length()
                        && ys[j] >= strip.y()
                        && ys[j] < strip.y() + strip.width()) {
                    gone[i][j] = true;
                }
            }
        }
    }

    private Area flood(int startI, int startJ) {
        int minX = Integer.MAX_VALUE;
        int minY = Integer.MAX_VALUE;
        int maxX = Integer.MIN_VALUE;
        int maxY = Integer.MIN_VALUE;
        long size = 0;
        var queue = new ArrayDeque<int[]>(List.of(new int[] {startI, startJ}));
        while (!queue.isEmpty()) {
            var cell = queue.pop();
            int i = cell[0];
            int j = cell[1];
            if (i < 0 || j < 0 || i >= gone.length || j >= gone[i].length || gone[i][j]) {
                continue;
            }
            gone[i][j] = true;
            minX = Math.min(minX, xs[i]);
            minY = Math.min(minY, ys[j]);
            maxX = Math.max(maxX, xs[i + 1]);
            maxY = Math.max(maxY, ys[j + 1]);
            size += (long) (xs[i + 1] - xs[i]) * (ys[j + 1] - ys[j]);
            queue.addAll(
                    List.of(new int[] {i - 1, j}, new int[] {i + 1, j}, new int[] {i, j - 1}, new int[] {i, j + 1}));
        }
        var box = new Area(minX, minY, maxX - minX, maxY - minY);
        if (box.size() != size) {
            throw new AssertionError("a remain within " + box + " is no rectangle");
        }
        return box;
    }
}
