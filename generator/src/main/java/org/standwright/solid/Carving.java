package org.standwright.solid;

import eu.mihosoft.jcsg.CSG;
import eu.mihosoft.jcsg.Polygon;
import eu.mihosoft.jcsg.PropertyStorage;
import eu.mihosoft.vvecmath.Vector3d;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.standwright.solid.Prism.Corner;
import org.standwright.solid.mesh.Facet;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Planes.Plane;

/**
 * Blank minus tools by the CSG kernel; the only class that knows it. Every polygon carries the number of its plane,
 * which the kernel hands on to all pieces it cuts the polygon into.
 */
final class Carving {
    private static final String PLANE = "plane";

    private final Planes planes;
    private final Map<Integer, PropertyStorage> tags = new HashMap<>();

    Carving(Planes planes) {
        this.planes = planes;
    }

    /** The faces of {@code blank} less all tools, in pieces that overlap nowhere but don't meet corner to corner; none if nothing is left. */
    List<Facet> carve(Prism blank, List<List<Prism>> groups) {
        var rest = solid(polygons(blank, false));
        for (var group : groups) {
            var tools = group.stream()
                    .flatMap(tool -> polygons(tool, true).stream())
                    .toList();
            rest = rest.difference(solid(new ArrayList<>(tools)));
            if (rest.getPolygons().isEmpty()) {
                // the kernel takes an empty operand for all of space
                return List.of();
            }
        }
        return rest.getPolygons().stream().map(Carving::facet).toList();
    }

    private static CSG solid(List<Polygon> polygons) {
        // the other kinds of optimisation give wrong solids
        return CSG.fromPolygons(polygons).optimization(CSG.OptType.NONE);
    }

    private List<Polygon> polygons(Prism prism, boolean tool) {
        var outline = prism.outline();
        int n = outline.size();
        var polygons = new ArrayList<Polygon>();
        var up = outline.stream()
                .map(corner -> point(prism, corner, prism.top()))
                .toList();
        var down = IntStream.range(0, n)
                .mapToObj(i -> point(prism, outline.get(n - 1 - i), prism.bottom()))
                .toList();
        polygons.add(polygon(up, prism.level(prism.top(), 1), tool));
        polygons.add(polygon(down, prism.level(prism.bottom(), -1), tool));
        for (int i = 0; i < n; i++) {
            polygons.add(side(outline.get(i), outline.get((i + 1) % n), prism, tool));
        }
        return polygons;
    }

    private Polygon side(Corner a, Corner b, Prism prism, boolean tool) {
        var wall = List.of(
                point(prism, a, prism.bottom()),
                point(prism, b, prism.bottom()),
                point(prism, b, prism.top()),
                point(prism, a, prism.top()));
        return polygon(wall, prism.side(a, b), tool);
    }

    /** A tool's face looks the other way once it is a face of what the tool leaves. */
    private Polygon polygon(List<Vector3d> corners, Plane plane, boolean tool) {
        int number = planes.number(tool ? plane.turned() : plane);
        return Polygon.fromPoints(corners, tags.computeIfAbsent(number, Carving::tag));
    }

    private static PropertyStorage tag(int plane) {
        var tag = new PropertyStorage();
        tag.set(PLANE, plane);
        return tag;
    }

    private static Vector3d point(Prism prism, Corner corner, int w) {
        double step = 1.0 / Solid.PER_MM;
        var xyz = prism.point(corner, w);
        return Vector3d.xyz(xyz[0] * step, xyz[1] * step, xyz[2] * step);
    }

    private static Facet facet(Polygon polygon) {
        int plane = polygon.getStorage().<Integer>getValue(PLANE).orElseThrow();
        var xyz = polygon.vertices.stream()
                .flatMapToDouble(vertex -> DoubleStream.of(vertex.pos.x(), vertex.pos.y(), vertex.pos.z()))
                .map(mm -> mm * Solid.PER_MM)
                .toArray();
        return new Facet(plane, xyz);
    }
}
