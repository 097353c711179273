package org.standwright.make;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.standwright.geom.Require;

/**
 * One file to hand over.
 *
 * @param name path inside the output folder, its steps parted by '/': {@code parts/A-side-mm.stl}
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
                    "'" + name + "' is no name for an output file; write it like 'cut-list.csv' or 'parts/A-mm.stl'.");
        }
        if (name.equals(Manifest.FILE) || name.equals(Staging.MARKER)) {
            throw new IllegalArgumentException("'" + name + "' is taken by the output folder itself.");
        }
    }

    /** The same file with its bytes worked out now, so that several can be worked out side by side. */
    OutputFile inMemory() {
        var bytes = new ByteArrayOutputStream();
        try {
            content.writeTo(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("'" + name + "' cannot be put together.", e);
        }
        return new OutputFile(name, bytes::writeTo);
    }
}
