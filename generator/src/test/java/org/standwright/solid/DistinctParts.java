package org.standwright.solid;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.standwright.Presets;
import org.standwright.assembly.Assembly;
import org.standwright.design.built.Furniture;
import org.standwright.part.Part;

/** Every different workpiece of the presets, and the assemblies that they are in. */
final class DistinctParts {
    private DistinctParts() {}

    static Stream<Assembly> assemblies() {
        return Presets.furniture().stream().map(Furniture::assembly);
    }

    /** By the assembly that each is first in and its label there. */
    static Map<String, Part> all() {
        var all = new TreeMap<String, Part>();
        Set<Workpiece> seen = new HashSet<>();
        assemblies()
                .forEach(assembly -> assembly.parts().stream()
                        .filter(placed -> seen.add(Workpiece.of(placed.part(), Fineness.FILE)))
                        .forEach(placed -> all.put(assembly.name() + " " + placed.label(), placed.part())));
        return all;
    }
}
