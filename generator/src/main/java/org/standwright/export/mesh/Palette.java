package org.standwright.export.mesh;

import java.util.List;
import org.standwright.export.SafeNames;
import org.standwright.part.Colour;
import org.standwright.part.Material;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;

/**
 * The different materials of an assembly, in the order in which its parts need them.
 *
 * @param names one for each, none twice
 */
record Palette(List<Material> materials, List<String> names) {
    static Palette of(AssemblySolids assembly, SafeNames safe) {
        var materials =
                assembly.solids().stream().map(PlacedSolid::material).distinct().toList();
        return new Palette(
                materials,
                materials.stream().map(material -> safe.of(material.name())).toList());
    }

    int size() {
        return materials.size();
    }

    int index(Material material) {
        return materials.indexOf(material);
    }

    String name(int index) {
        return names.get(index);
    }

    Colour colour(int index) {
        return materials.get(index).colour();
    }
}
