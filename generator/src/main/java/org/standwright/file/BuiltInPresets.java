package org.standwright.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;
import java.util.List;

/**
 * The presets that are packed with the program, in a jar or in a folder of classes.
 *
 * @param readme the file README.md beside the presets' folders
 */
record BuiltInPresets(URL readme) {
    private static final String ENDING = ".json";

    static BuiltInPresets published() {
        return new BuiltInPresets(BuiltInPresets.class.getResource("/presets/README.md"));
    }

    /** Names of the presets of one kind, sorted. */
    List<String> names(FileKind kind) {
        try {
            return readme.openConnection() instanceof JarURLConnection jar
                    ? namesInJar(jar, kind)
                    : Folder.jsonNames(Path.of(readme.toURI()).resolveSibling(kind.folder()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    SourceText read(FileKind kind, String name) {
        var place = kind.folder() + "/" + name + ENDING;
        try (var in = URI.create(readme.toString().replaceFirst("README\\.md$", place))
                .toURL()
                .openStream()) {
            return SourceText.read("presets/" + place, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> namesInJar(JarURLConnection connection, FileKind kind) throws IOException {
        connection.setUseCaches(false);
        var folder = connection.getEntryName().replaceFirst("README\\.md$", kind.folder() + "/");
        try (var jar = connection.getJarFile()) {
            return jar.stream()
                    .map(entry -> entry.getName())
                    .filter(name -> name.startsWith(folder) && name.endsWith(ENDING))
                    .map(name -> name.substring(folder.length(), name.length() - ENDING.length()))
                    .sorted()
                    .toList();
        }
    }
}
