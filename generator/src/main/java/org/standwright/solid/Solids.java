package org.standwright.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.standwright.part.Part;

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

    private static Stream<Supplier<List<List<Prism>>>> orders(List<Prism> tools) {
        var backwards = new ArrayList<>(tools);
        Collections.reverse(backwards);
        return Stream.of(
                () -> Groups.of(tools), () -> Groups.of(backwards), () -> oneByOne(tools), () -> oneByOne(backwards));
    }

    private static List<List<Prism>> oneByOne(List<Prism> tools) {
        return tools.stream().map(List::of).toList();
    }

    private static Solid build(Shape shape, List<List<Prism>> groups) {
        var planes = new Planes();
        var facets = new Carving(planes).carve(shape.blank(), groups);
        var mesh = TouchSplit.split(FaceRebuild.rebuild(facets, planes));
        EdgeCheck.check(mesh);
        VolumeCheck.check(mesh, shape);
        return new Solid(mesh.vertices(), mesh.triangles());
    }
}
