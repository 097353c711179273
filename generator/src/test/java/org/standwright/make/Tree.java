package org.standwright.make;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A folder as a maker would read it out, for tests. */
final class Tree {
    private Tree() {}

    /** Every file and its text, every empty folder as 'name/'; the manifest is left out. */
    static SortedMap<String, String> of(Path folder) {
        var tree = new TreeMap<String, String>();
        try (var paths = Files.walk(folder)) {
            for (var path : paths.collect(Collectors.toList())) {
                var name = folder.relativize(path).toString();
                if (Files.isSymbolicLink(path)) {
                    tree.put(name, "-> " + Files.readSymbolicLink(path));
                } else if (Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
                    tree.put(name, Files.readString(path));
                } else if (!path.equals(folder) && names(path).isEmpty()) {
                    tree.put(name + "/", "");
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        tree.remove(Manifest.FILE);
        return tree;
    }

    /** Names in a folder, sorted. */
    static List<String> names(Path folder) {
        try (var paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static OutputFile file(String name, String text) {
        return new OutputFile(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
