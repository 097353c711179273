package org.standwright.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.standwright.part.Part;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.ClosedMesh;
import org.standwright.solid.mesh.Facet;
import org.standwright.solid.mesh.Planes;

/** From a part at its finished size to its solid. */
public final class Solids {
    private Solids() {}

    /** The solid of {@code part}, as fine as files need it. Throws {@link SolidException} if there is none. */
    public static Solid of(Part part) {
        return of(part, Fineness.FILE);
    }

    /** The solid of {@code part} in its own frame. Throws {@link SolidException} if there is none. */
    public static Solid of(Part part, Fineness fineness) {
        return of(Workpiece.of(part, fineness), part.name());
    }

    /** Tries one order of cutting after another until a mesh closes. */
    static Solid of(Workpiece workpiece, String part) {
        var failures = new ArrayList<BrokenMeshException>();
        for (var way : ways(workpiece)) {
            var planes = new Planes();
            var pieces = way.pieces(workpiece.blank(), planes);
            if (pieces.isEmpty()) {
                throw SolidException.nothingLeft(part);
            }
            try {
                var mesh = ClosedMesh.of(pieces, planes);
                VolumeCheck.check(mesh, workpiece);
                return new Solid(mesh.vertices(), mesh.triangles());
            } catch (BrokenMeshException e) {
                failures.add(e);
            }
        }
        throw SolidException.broken(part, failures.get(0));
    }

    /** Large tools first: what they clear away, the later ones needn't cut. */
    private static List<Way> ways(Workpiece workpiece) {
        var tools = workpiece.tools();
        var falling = tools.stream()
                .sorted(Comparator.comparingDouble(Prism::area).reversed())
                .toList();
        var free = FreeTools.among(falling, workpiece.blank());
        var meeting = falling.stream().filter(tool -> !free.contains(tool)).toList();
        return List.of(
                new Way(free, () -> Groups.of(meeting)),
                new Way(List.of(), () -> Groups.of(falling)),
                new Way(List.of(), () -> Groups.of(tools)),
                new Way(List.of(), () -> oneByOne(falling)),
                new Way(List.of(), () -> oneByOne(tools)));
    }

    /** One way to cut: the free tools are not cut at all, the others group by group. */
    private record Way(List<Prism> free, Supplier<List<List<Prism>>> groups) {
        List<Facet> pieces(Prism blank, Planes planes) {
            var pieces = new ArrayList<>(new Carving(planes).carve(blank, groups.get()));
            if (!pieces.isEmpty()) {
                pieces.addAll(FreeTools.faces(free, blank, planes));
            }
            return pieces;
        }
    }

    private static List<List<Prism>> oneByOne(List<Prism> tools) {
        return tools.stream().map(List::of).toList();
    }
}
