package org.standwright.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import org.standwright.file.text.Folder;
import org.standwright.file.text.SourceText;

/**
 * The presets that are packed with the program, in a jar or in a folder of classes.
 *
 * @param program finds the program's resources
 */
record BuiltInPresets(ClassLoader program) {
    private static final String FOLDER = "presets/";
    private static final String README = FOLDER + "README.md";
    private static final String ENDING = ".json";

    static BuiltInPresets published() {
        return new BuiltInPresets(BuiltInPresets.class.getClassLoader());
    }

    boolean has(FileKind kind, String name) {
        return program.getResource(place(kind, name)) != null;
    }

    SourceText read(FileKind kind, String name) {
        var place = place(kind, name);
        try (var in = program.getResourceAsStream(place)) {
            return SourceText.read(place, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Names of the presets of one kind, sorted. */
    List<String> names(FileKind kind) {
        var readme = program.getResource(README);
        try {
            return readme.openConnection() instanceof JarURLConnection jar
                    ? namesInJar(jar, FOLDER + kind.folder() + "/")
                    : Folder.jsonNames(Path.of(readme.toURI()).resolveSibling(kind.folder()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> namesInJar(JarURLConnection connection, String folder) throws IOException {
        connection.setUseCaches(false); // the jar is closed here, and nobody else's with it
        try (var jar = connection.getJarFile()) {
            return jar.stream()
                    .map(ZipEntry::getName)
                    .filter(name -> name.startsWith(folder) && name.endsWith(ENDING))
                    .map(name -> name.substring(folder.length(), name.length() - ENDING.length()))
                    .sorted()
                    .toList();
        }
    }

    private static String place(FileKind kind, String name) {
        return FOLDER + kind.folder() + "/" + name + ENDING;
    }
}
