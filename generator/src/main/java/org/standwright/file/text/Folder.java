package org.standwright.file.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What lies in a folder, by exact name on every operating system, sorted. */
public final class Folder {
    private static final String ENDING = ".json";

    private Folder() {}

    /** Names of the JSON files in {@code folder}, without their ending; none when it is no folder. */
    public static List<String> jsonNames(Path folder) {
        return names(folder).stream()
                .filter(name -> name.endsWith(ENDING))
                .map(name -> name.substring(0, name.length() - ENDING.length()))
                .toList();
    }

    /** Names of everything that lies beside {@code path}. */
    static List<String> files(Path path) {
        var parent = path.toAbsolutePath().getParent();
        return parent == null ? List.of() : names(parent);
    }

    private static List<String> names(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (var entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new DesignFileException(
                    FileProblem.whole(folder.toString(), "cannot be listed", "Look at the folder's permissions."));
        }
    }
}
