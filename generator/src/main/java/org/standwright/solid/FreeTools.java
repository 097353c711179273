package org.standwright.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.solid.Prism.Corner;
import org.standwright.solid.mesh.Facet;
import org.standwright.solid.mesh.Planes;

/**
 * Tools that touch no other tool, nor any face of the blank but where they enter: a hole in the middle of nowhere. What they leave is known
 * without cutting: their walls, a floor where they end, and a gap in each face that they enter by.
 */
final class FreeTools {
    private FreeTools() {}

    /** Those of {@code tools} that are free. */
    static List<Prism> among(List<Prism> tools, Prism blank) {
        var extents = tools.stream().map(Prism::extent).toList();
        return IntStream.range(0, tools.size())
                .filter(i -> isAmidst(tools.get(i), blank)
                        && IntStream.range(0, tools.size())
                                .noneMatch(j -> j != i && extents.get(i).touches(extents.get(j))))
                .mapToObj(tools::get)
                .toList();
    }

    /** Whether no side of it reaches a face of the blank. */
    private static boolean isAmidst(Prism tool, Prism blank) {
        var extent = tool.seen();
        var whole = tool.direction().seen(blank.extent());
        return extent.x0() > whole.x0()
                && extent.x1() < whole.x1()
                && extent.y0() > whole.y0()
                && extent.y1() < whole.y1();
    }

    /** The faces that free tools leave; a gap is a face of the blank's plane that runs the other way round. */
    static List<Facet> faces(List<Prism> free, Prism blank, Planes planes) {
        var facets = new ArrayList<Facet>();
        for (var tool : free) {
            var whole = tool.direction().seen(blank.extent());
            int low = Math.max(tool.bottom(), whole.z0());
            int high = Math.min(tool.top(), whole.z1());
            var outline = tool.outline();
            int n = outline.size();
            for (int i = 0; i < n; i++) {
                facets.add(wall(tool, outline.get(i), outline.get((i + 1) % n), low, high, planes));
            }
            boolean throughTop = tool.top() >= whole.z1();
            boolean throughBottom = tool.bottom() <= whole.z0();
            var under =
                    IntStream.range(0, n).mapToObj(i -> outline.get(n - 1 - i)).toList();
            facets.add(level(tool, under, high, throughTop ? 1 : -1, planes));
            facets.add(level(tool, outline, low, throughBottom ? -1 : 1, planes));
        }
        return facets;
    }

    /** Looks into the hole. */
    private static Facet wall(Prism tool, Corner a, Corner b, int low, int high, Planes planes) {
        int plane = planes.number(tool.side(a, b).turned());
        return facet(plane, tool.point(b, low), tool.point(a, low), tool.point(a, high), tool.point(b, high));
    }

    private static Facet level(Prism tool, List<Corner> ring, int w, int side, Planes planes) {
        var points = ring.stream().map(corner -> tool.point(corner, w)).toArray(int[][]::new);
        return facet(planes.number(tool.level(w, side)), points);
    }

    private static Facet facet(int plane, int[]... points) {
        var xyz = Arrays.stream(points)
                .flatMapToInt(Arrays::stream)
                .asDoubleStream()
                .toArray();
        return new Facet(plane, xyz);
    }
}
