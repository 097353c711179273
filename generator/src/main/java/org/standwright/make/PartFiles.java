package org.standwright.make;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.export.StlWriter;
import org.standwright.solid.PlacedSolid;

/** One file for each line of the cut list: the part's solid in its own frame. */
final class PartFiles {
    private PartFiles() {}

    static List<OutputFile> stl(Product product) {
        var solids =
                product.solids().solids().stream().collect(Collectors.toMap(PlacedSolid::label, PlacedSolid::solid));
        return product.cutList().lines().stream()
                .map(line -> {
                    var solid = solids.get(line.members().get(0));
                    var name = FileNames.of(line.label(), line.part().name(), ".stl");
                    return new OutputFile("parts/" + name, out -> StlWriter.write(solid, out));
                })
                .toList();
    }
}
