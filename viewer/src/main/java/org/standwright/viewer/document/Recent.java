package org.standwright.viewer.document;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Files that were open, the latest first. */
public record Recent(List<String> files) {
    private static final int MOST = 10;

    public Recent {
        files = files == null ? List.of() : List.copyOf(files);
    }

    public static Recent none() {
        return new Recent(List.of());
    }

    public Recent with(Path file) {
        var name = file.toAbsolutePath().toString();
        return new Recent(Stream.concat(Stream.of(name), files.stream().filter(other -> !other.equals(name)))
                .limit(MOST)
                .toList());
    }

    public Recent without(Path file) {
        var name = file.toAbsolutePath().toString();
        return new Recent(files.stream().filter(other -> !other.equals(name)).toList());
    }
}
