package org.standwright.make;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.standwright.geom.Require;

/**
 * One file to hand over.
 *
 * @param name path inside the output folder, its steps parted by '/': {@code parts/A-side.stl}
 * @param content what writes its bytes; asked once, when the file is written
 */
public record OutputFile(String name, Content content) {
    /** Something that writes its own bytes. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    public OutputFile {
        Require.named("output file", name);
        var steps = List.of(name.split("/", -1));
        if (name.indexOf('\\') >= 0 || steps.contains("") || steps.contains(".") || steps.contains("..")) {
            throw new IllegalArgumentException(
                    "'" + name + "' is no name for an output file; write it like 'cut-list.csv' or 'parts/A.stl'.");
        }
        if (name.equals(Manifest.FILE) || name.equals(Staging.MARKER)) {
            throw new IllegalArgumentException("'" + name + "' is taken by the output folder itself.");
        }
    }
}
