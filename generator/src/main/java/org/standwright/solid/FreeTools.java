package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.solid.Prism.Corner;
import org.standwright.solid.mesh.Facet;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Planes.Plane;

/**
 * Tools that touch no other tool and no edge of the blank: a hole in the middle of nowhere. What they leave is known
 * without cutting: their walls, a floor where they end, and a gap in each face that they enter by.
 */
final class FreeTools {
    private FreeTools() {}

    /** Those of {@code tools} that are free. */
    static List<Prism> among(List<Prism> tools, Prism blank) {
        var extents = tools.stream().map(Prism::extent).toList();
        var whole = blank.extent();
        return IntStream.range(0, tools.size())
                .filter(i -> {
                    var extent = extents.get(i);
                    return extent.x0() > whole.x0()
                            && extent.x1() < whole.x1()
                            && extent.y0() > whole.y0()
                            && extent.y1() < whole.y1()
                            && IntStream.range(0, tools.size())
                                    .noneMatch(j -> j != i && extent.touches(extents.get(j)));
                })
                .mapToObj(tools::get)
                .toList();
    }

    /** The faces that free tools leave; a gap is a face of the blank's plane that runs the other way round. */
    static List<Facet> faces(List<Prism> free, Prism blank, Planes planes) {
        var facets = new ArrayList<Facet>();
        for (var tool : free) {
            int low = Math.max(tool.bottom(), blank.bottom());
            int high = Math.min(tool.top(), blank.top());
            var outline = tool.outline();
            int n = outline.size();
            for (int i = 0; i < n; i++) {
                facets.add(wall(outline.get(i), outline.get((i + 1) % n), low, high, planes));
            }
            boolean throughTop = tool.top() >= blank.top();
            boolean throughBottom = tool.bottom() <= blank.bottom();
            var under =
                    IntStream.range(0, n).mapToObj(i -> outline.get(n - 1 - i)).toList();
            facets.add(level(under, high, throughTop ? 1 : -1, planes));
            facets.add(level(outline, low, throughBottom ? -1 : 1, planes));
        }
        return facets;
    }

    /** Looks into the hole. */
    private static Facet wall(Corner a, Corner b, int low, int high, Planes planes) {
        int plane = planes.number(Plane.upright(a.x(), a.y(), b.x(), b.y()).turned());
        return new Facet(
                plane, new double[] {b.x(), b.y(), low, a.x(), a.y(), low, a.x(), a.y(), high, b.x(), b.y(), high});
    }

    private static Facet level(List<Corner> ring, int z, int side, Planes planes) {
        var xyz = ring.stream()
                .flatMapToInt(corner -> IntStream.of(corner.x(), corner.y(), z))
                .asDoubleStream()
                .toArray();
        return new Facet(planes.number(Plane.level(z, side)), xyz);
    }
}
