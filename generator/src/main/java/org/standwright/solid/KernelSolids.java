package org.standwright.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.ClosedMesh;
import org.standwright.solid.mesh.Mesh;
import org.standwright.solid.mesh.Planes;

/** The way to a solid by the CSG kernel alone: slow, and so different from the other that each can judge the other. */
final class KernelSolids {
    private KernelSolids() {}

    /** Tries one order of cutting after another until a mesh closes; throws {@link SolidException} when none does. */
    static Mesh of(Workpiece workpiece, String part) {
        var failures = new ArrayList<BrokenMeshException>();
        for (var way : ways(workpiece)) {
            var planes = new Planes();
            try {
                var carving = new Carving(planes);
                var pieces = carving.facets(carving.rest(workpiece.blank(), way.get()));
                if (pieces.isEmpty()) {
                    throw SolidException.nothingLeft(part);
                }
                var mesh = ClosedMesh.of(pieces, planes);
                VolumeCheck.check(mesh, workpiece);
                return mesh;
            } catch (BrokenMeshException e) {
                failures.add(e);
            }
        }
        throw SolidException.broken(part, failures.get(0));
    }

    /**
     * Orders in which the kernel may cut, group by group. Large tools first: what they clear away, the later ones needn't
     * cut.
     */
    private static List<Supplier<List<List<Tool>>>> ways(Workpiece workpiece) {
        var tools = workpiece.tools();
        var falling = tools.stream()
                .sorted(Comparator.comparingDouble((Tool tool) -> tool.volumeWithin(workpiece.board()))
                        .reversed())
                .toList();
        return List.of(
                () -> Groups.of(falling), () -> Groups.of(tools), () -> oneByOne(falling), () -> oneByOne(tools));
    }

    private static List<List<Tool>> oneByOne(List<Tool> tools) {
        return tools.stream().map(List::of).toList();
    }
}
