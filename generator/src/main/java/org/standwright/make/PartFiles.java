package org.standwright.make;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standwright.solid.PlacedSolid;

/** One file for each line of the cut list: the part in its own frame. */
final class PartFiles {
    /** What puts one part into a file, wherever it stands. */
    @FunctionalInterface
    interface Writer {
        void write(PlacedSolid part, OutputStream out) throws IOException;
    }

    private PartFiles() {}

    /** @param ending of the files' names: {@code -mm.stl} */
    static List<OutputFile> of(Product product, String ending, Writer writer) {
        var parts =
                product.solids().solids().stream().collect(Collectors.toMap(PlacedSolid::label, Function.identity()));
        return product.cutList().lines().stream()
                .map(line -> {
                    var part = parts.get(line.members().get(0));
                    var name = FileNames.of(line.label(), line.part().name(), ending);
                    return new OutputFile("parts/" + name, out -> writer.write(part, out));
                })
                .toList();
    }
}
