package org.standwright.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/** Tools sorted into groups that hang together: each touches another of its group and none of any other. */
final class Clusters {
    private Clusters() {}

    /** By the boxes around them. */
    static <T extends Tool> List<List<T>> of(List<T> tools) {
        var extents = new Extent[tools.size()];
        for (int i = 0; i < extents.length; i++) {
            extents[i] = tools.get(i).extent();
        }
        var seen = new boolean[extents.length];
        var clusters = new ArrayList<List<T>>();
        for (int i = 0; i < extents.length; i++) {
            if (!seen[i]) {
                clusters.add(around(i, tools, extents, seen));
            }
        }
        return clusters;
    }

    private static <T> List<T> around(int first, List<T> tools, Extent[] extents, boolean[] seen) {
        var cluster = new ArrayList<T>();
        var open = new ArrayDeque<Integer>();
        open.add(first);
        seen[first] = true;
        while (!open.isEmpty()) {
            int at = open.remove();
            cluster.add(tools.get(at));
            for (int i = 0; i < extents.length; i++) {
                if (!seen[i] && extents[i].touches(extents[at])) {
                    seen[i] = true;
                    open.add(i);
                }
            }
        }
        return cluster;
    }
}
