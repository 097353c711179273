package org.standwright.export.mesh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.part.Material;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;

/**
 * What the parts of one workpiece and material share in a file that says a mesh once and where it stands many times.
 *
 * @param parts in the order of the assembly
 */
record Body(Solid solid, Material material, List<PlacedSolid> parts) {
    private record Key(Solid solid, Material material) {}

    /** Every different one, in the order of the assembly's parts. */
    static List<Body> of(AssemblySolids assembly) {
        var bodies = new LinkedHashMap<Key, Body>();
        for (var placed : assembly.solids()) {
            bodies.computeIfAbsent(
                            new Key(placed.solid(), placed.material()),
                            key -> new Body(key.solid, key.material, new ArrayList<>()))
                    .parts
                    .add(placed);
        }
        return List.copyOf(bodies.values());
    }

    /** The label of its part, or of the first with how many more there are. */
    String name() {
        var first = parts.get(0).label();
        return parts.size() == 1 ? first : first + " and " + (parts.size() - 1) + " more like it";
    }
}
