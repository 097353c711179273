package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Triangles of one surface that hang together over their sides; each will be a face. A loose triangle is one alone. */
final class Regions {
    private final Sides sides;
    private final int[] regions;
    private final List<Integer> labels = new ArrayList<>();
    private final List<Integer> sizes = new ArrayList<>();

    Regions(Sides sides, int[] labelOfTriangle) {
        this.sides = sides;
        this.regions = new int[labelOfTriangle.length];
        Arrays.fill(regions, -1);
        var open = new int[regions.length];
        for (int t = 0; t < regions.length; t++) {
            if (regions[t] < 0) {
                fill(t, labelOfTriangle, open);
            }
        }
    }

    private void fill(int first, int[] labelOfTriangle, int[] open) {
        int region = labels.size();
        labels.add(labelOfTriangle[first]);
        regions[first] = region;
        open[0] = first;
        int size = 1;
        for (int count = labelOfTriangle[first] == Labels.LOOSE ? 0 : 1; count > 0; ) {
            int t = open[--count];
            for (int side = 3 * t; side < 3 * t + 3; side++) {
                int other = Sides.triangle(sides.twin(side));
                if (regions[other] < 0 && labelOfTriangle[other] == labelOfTriangle[first]) {
                    regions[other] = region;
                    open[count++] = other;
                    size++;
                }
            }
        }
        sizes.add(size);
    }

    int count() {
        return labels.size();
    }

    /** The region that a side goes round. */
    int left(int side) {
        return regions[Sides.triangle(side)];
    }

    /** The region across a side. */
    int right(int side) {
        return left(sides.twin(side));
    }

    boolean isBorder(int side) {
        return left(side) != right(side);
    }

    /** How many triangles it is made of. */
    int triangles(int region) {
        return sizes.get(region);
    }

    int ofTriangle(int triangle) {
        return regions[triangle];
    }

    /** Number of its surface, or {@link Labels#LOOSE}. */
    int label(int region) {
        return labels.get(region);
    }
}
