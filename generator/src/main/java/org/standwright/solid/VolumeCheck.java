package org.standwright.solid;

import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.Mesh;

/** Catches a solid that closes but can't be what was asked for. */
final class VolumeCheck {
    private static final double RELATIVE = 1e-6;
    /** 1 mm³ in grid units. */
    private static final double CUBIC_MM = Math.pow(Solid.PER_MM, 3);

    private VolumeCheck() {}

    /** A solid is no larger than its blank, and no smaller than the blank less all tools at their full section. */
    static void check(Mesh mesh, Workpiece workpiece) {
        double volume = mesh.sixfoldVolume() / 6;
        double whole = workpiece.blank().volumeWithin(workpiece.board());
        double slack = RELATIVE * whole + CUBIC_MM;
        double most = 0;
        for (var cut : workpiece.cuts()) {
            for (var tool : cut.tools()) {
                most += tool.volumeWithin(workpiece.board());
            }
        }
        if (volume > whole + slack || volume < whole - most - slack) {
            throw new BrokenMeshException("its volume can't be right");
        }
        if (!isWithin(mesh.vertices(), workpiece.blank().extent())) {
            throw new BrokenMeshException("it reaches out of its blank");
        }
    }

    private static boolean isWithin(int[] vertices, Extent box) {
        for (int i = 0; i < vertices.length; i += 3) {
            boolean inside = vertices[i] >= box.x0()
                    && vertices[i] <= box.x1()
                    && vertices[i + 1] >= box.y0()
                    && vertices[i + 1] <= box.y1()
                    && vertices[i + 2] >= box.z0()
                    && vertices[i + 2] <= box.z1();
            if (!inside) {
                return false;
            }
        }
        return true;
    }
}
