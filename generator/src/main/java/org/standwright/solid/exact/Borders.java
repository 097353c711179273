package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The sides that part regions, and the seams that a region has with itself, as closed loops round each region. */
final class Borders {
    private final Sides sides;
    private final boolean[] border;
    private final List<List<int[]>> loops = new ArrayList<>();

    /** @param seams sides inside of regions, in one direction */
    Borders(Sides sides, Regions regions, List<Integer> seams) {
        this.sides = sides;
        this.border = new boolean[sides.count()];
        for (int side = 0; side < border.length; side++) {
            border[side] = regions.isBorder(side);
        }
        for (int seam : seams) {
            border[seam] = true;
            border[sides.twin(seam)] = true;
        }
        for (int region = 0; region < regions.count(); region++) {
            loops.add(new ArrayList<>());
        }
        trace(regions);
    }

    private void trace(Regions regions) {
        var seen = new boolean[border.length];
        for (int side = 0; side < border.length; side++) {
            if (border[side] && !seen[side]) {
                loops.get(regions.left(side)).add(loop(side, seen));
            }
        }
    }

    private int[] loop(int first, boolean[] seen) {
        var loop = new int[16];
        int count = 0;
        for (int side = first; !seen[side]; side = following(side)) {
            seen[side] = true;
            if (count == loop.length) {
                loop = Arrays.copyOf(loop, 2 * count);
            }
            loop[count++] = side;
        }
        return Arrays.copyOf(loop, count);
    }

    /** The border that goes on where one ends, round the same region. */
    private int following(int side) {
        int next = Sides.next(side);
        while (!border[next]) {
            next = Sides.next(sides.twin(next));
        }
        return next;
    }

    boolean isBorder(int side) {
        return border[side];
    }

    /** Sides in turn, counter-clockwise seen from outside the solid; holes the other way. */
    List<int[]> around(int region) {
        return loops.get(region);
    }
}
