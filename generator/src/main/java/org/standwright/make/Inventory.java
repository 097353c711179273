package org.standwright.make;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What lies in a folder, told apart by its manifest. Links are not followed.
 *
 * @param manifest empty when we did not make the folder
 * @param folders every subfolder, a folder before those in it; names parted by '/'
 * @param others everything else but the manifest itself, sorted
 */
record Inventory(Path folder, Optional<Manifest> manifest, List<String> folders, List<String> others) {

    static Inventory of(Path folder) throws IOException {
        var manifest = Manifest.in(folder);
        var folders = new ArrayList<String>();
        var others = new ArrayList<String>();
        for (var path : pathsIn(folder)) {
            var name = nameIn(folder, path);
            if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
                folders.add(name);
            } else if (manifest.isEmpty() || !name.equals(Manifest.FILE)) {
                others.add(name);
            }
        }
        return new Inventory(folder, manifest, folders, others);
    }

    boolean isEmpty() {
        return manifest.isEmpty() && folders.isEmpty() && others.isEmpty();
    }

    List<String> foldersInnermostFirst() {
        var reversed = new ArrayList<>(folders);
        Collections.reverse(reversed);
        return reversed;
    }

    /** Whether the folder may be replaced: it is one of ours, or there is nothing in it. */
    boolean isOurs() {
        return manifest.isPresent() || isEmpty();
    }

    /** Files that we did not write, or that were changed since. */
    List<String> foreign() throws IOException {
        var foreign = new ArrayList<String>();
        for (var name : others) {
            if (!vouchedFor(name)) {
                foreign.add(name);
            }
        }
        return foreign;
    }

    boolean vouchedFor(String name) throws IOException {
        return manifest.isPresent() && manifest.get().vouchesFor(name, folder);
    }

    /** Subfolders in which none of our files lies. */
    List<String> foreignFolders() {
        return folders.stream()
                .filter(name -> manifest.isEmpty() || !manifest.get().knowsFolder(name))
                .toList();
    }

    private static List<Path> pathsIn(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            return paths.filter(path -> !path.equals(folder)).sorted().collect(Collectors.toList());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String nameIn(Path folder, Path path) {
        return folder.relativize(path).toString().replace(path.getFileSystem().getSeparator(), "/");
    }
}
