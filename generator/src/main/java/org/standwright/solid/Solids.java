package org.standwright.solid;

import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
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
        var failure = new BrokenMeshException("nothing was tried");
        for (var order : orders(shape.tools()).toList()) {
            try {
                return build(shape, order.get());
            } catch (BrokenMeshException e) {
                failure = e;
            }
        }
        throw new SolidException(part, failure);
    }

    /** Large tools first: what they clear away, the later ones needn't cut. */
    private static Stream<Supplier<List<List<Prism>>>> orders(List<Prism> tools) {
        var falling = tools.stream()
                .sorted(Comparator.comparingDouble(Prism::area).reversed())
                .toList();
        return Stream.of(
                () -> Groups.of(falling), () -> Groups.of(tools), () -> oneByOne(falling), () -> oneByOne(tools));
    }

    private static List<List<Prism>> oneByOne(List<Prism> tools) {
        return tools.stream().map(List::of).toList();
    }

    private static Solid build(Shape shape, List<List<Prism>> groups) {
        var planes = new Planes();
        var facets = new Carving(planes).carve(shape.blank(), groups);
        var mesh = ClosedMesh.of(facets, planes);
        VolumeCheck.check(mesh, shape);
        return new Solid(mesh.vertices(), mesh.triangles());
    }
}
