package org.standwright.make;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
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
                    return new OutputFile(name(line, ending), out -> writer.write(part, out));
                })
                .toList();
    }

    static String name(CutLine line, String ending) {
        return name(line.label(), line.part().name(), ending);
    }

    /** Of a file that shows one line of the cut list. */
    static String name(String label, String part, String ending) {
        return "parts/" + FileNames.of(label, part, ending);
    }
}
