package org.standwright.solid;

import org.standwright.part.Part;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.Mesh;

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

    /** Whatever fails its check on the fast way goes the kernel's. */
    static Solid of(Workpiece workpiece, String part) {
        var mesh = mesh(workpiece, part);
        return new Solid(mesh.vertices(), mesh.triangles());
    }

    private static Mesh mesh(Workpiece workpiece, String part) {
        try {
            return LayeredSolids.of(workpiece);
        } catch (BrokenMeshException e) {
            return KernelSolids.of(workpiece, part);
        }
    }
}
