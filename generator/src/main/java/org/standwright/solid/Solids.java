package org.standwright.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.standwright.part.Part;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.ClosedMesh;
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
        return of(Shape.of(part, fineness), part.name());
    }

    /** Tries one order of cutting after another until a mesh closes. */
    static Solid of(Shape shape, String part) {
        var failures = new ArrayList<BrokenMeshException>();
        for (var order : orders(shape.tools())) {
            var planes = new Planes();
            var pieces = new Carving(planes).carve(shape.blank(), order.get());
            if (pieces.isEmpty()) {
                throw SolidException.nothingLeft(part);
            }
            try {
                var mesh = ClosedMesh.of(pieces, planes);
                VolumeCheck.check(mesh, shape);
                return new Solid(mesh.vertices(), mesh.triangles());
            } catch (BrokenMeshException e) {
                failures.add(e);
            }
        }
        throw SolidException.broken(part, failures.get(0));
    }

    /** Large tools first: what they clear away, the later ones needn't cut. */
    private static List<Supplier<List<List<Prism>>>> orders(List<Prism> tools) {
        var falling = tools.stream()
                .sorted(Comparator.comparingDouble(Prism::area).reversed())
                .toList();
        return List.of(
                () -> Groups.of(falling), () -> Groups.of(tools), () -> oneByOne(falling), () -> oneByOne(tools));
    }

    private static List<List<Prism>> oneByOne(List<Prism> tools) {
        return tools.stream().map(List::of).toList();
    }
}
