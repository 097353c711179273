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
        var blank = workpiece.blank();
        double whole = blank.area() * (blank.top() - blank.bottom());
        double slack = RELATIVE * whole + CUBIC_MM;
        double most = workpiece.tools().stream()
                .mapToDouble(tool -> taken(tool, blank))
                .sum();
        if (volume > whole + slack || volume < whole - most - slack) {
            throw new BrokenMeshException("its volume can't be right");
        }
    }

    private static double taken(Prism tool, Prism blank) {
        var whole = tool.direction().seen(blank.extent());
        return tool.area() * (Math.min(tool.top(), whole.z1()) - Math.max(tool.bottom(), whole.z0()));
    }
}
