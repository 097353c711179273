package org.standwright.solid;

import eu.mihosoft.jcsg.CSG;
import eu.mihosoft.jcsg.Polygon;
import eu.mihosoft.jcsg.PropertyStorage;
import eu.mihosoft.vvecmath.Vector3d;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.Facet;
import org.standwright.solid.mesh.Planes;

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

    /** A blank without tools, group by group. */
    CSG rest(Tool blank, List<List<Tool>> groups) {
        return without(solid(polygons(blank, false)), groups);
    }

    /** The part of a workpiece's blank in a cell, without tools. */
    CSG rest(Workpiece workpiece, Extent cell, List<List<Tool>> groups) {
        var box = solid(polygons(Prism.box(cell), false));
        return without(workpiece.isWholeBoard() ? box : within(box, workpiece.blank()), groups);
    }

    private CSG within(CSG box, Prism blank) {
        var polygons = polygons(blank, false);
        return guarded(() -> box.intersect(solid(polygons)));
    }

    CSG without(CSG solid, List<List<Tool>> groups) {
        var rest = solid;
        for (var group : groups) {
            if (!rest.getPolygons().isEmpty()) {
                // the kernel takes an empty operand for all of space
                rest = less(
                        rest,
                        group.stream()
                                .flatMap(tool -> polygons(tool, true).stream())
                                .toList());
            }
        }
        return rest;
    }

    private static CSG less(CSG solid, List<Polygon> tools) {
        return guarded(() -> solid.difference(solid(new ArrayList<>(tools))));
    }

    /** Throws {@link BrokenMeshException} where the kernel recurs without end, as it may on faces all but in one plane. */
    private static CSG guarded(Supplier<CSG> operation) {
        try {
            return operation.get();
        } catch (StackOverflowError e) {
            throw new BrokenMeshException("its features all but share a plane");
        }
    }

    /**
     * The faces of a solid, in pieces that overlap nowhere but don't meet corner to corner; none of an empty one.
     */
    List<Facet> facets(CSG solid) {
        return solid.getPolygons().stream().map(Carving::facet).toList();
    }

    private static CSG solid(List<Polygon> polygons) {
        // the other kinds of optimisation give wrong solids
        return CSG.fromPolygons(polygons).optimization(CSG.OptType.NONE);
    }

    /** A tool's face looks the other way once it is a face of what the tool leaves. */
    private List<Polygon> polygons(Tool tool, boolean taken) {
        return tool.sides().stream()
                .map(side -> {
                    int plane = planes.number(taken ? side.plane().turned() : side.plane());
                    var corners = side.corners().stream().map(Carving::point).toList();
                    return Polygon.fromPoints(corners, tags.computeIfAbsent(plane, Carving::tag));
                })
                .toList();
    }

    private static PropertyStorage tag(int plane) {
        var tag = new PropertyStorage();
        tag.set(PLANE, plane);
        return tag;
    }

    private static Vector3d point(int[] xyz) {
        double step = 1.0 / Solid.PER_MM;
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
