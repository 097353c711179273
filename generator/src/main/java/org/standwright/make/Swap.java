package org.standwright.make;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One replacement of a folder by a new one beside it: {@code DIR} becomes {@code DIR.old-k}, {@code DIR.new-k} becomes
 * {@code DIR}, and what is left in {@code DIR.old-k} is settled. {@code k} is twelve hexadecimal digits.
 */
record Swap(Path folder, Path fresh, Path old, Disk disk) {
    private static final Pattern SUFFIX = Pattern.compile("\\.(?:new|old)-([0-9a-f]{12})");

    static Swap of(Path folder, String key, Disk disk) {
        var name = folder.getFileName().toString();
        return new Swap(
                folder, folder.resolveSibling(name + ".new-" + key), folder.resolveSibling(name + ".old-" + key), disk);
    }

    /** Swaps beside {@code folder} that an earlier run has left, whether begun, half done or not cleared away. */
    static List<Swap> leftBeside(Path folder, Disk disk) throws IOException {
        var parent = folder.getParent();
        if (!Files.isDirectory(parent)) {
            return List.of();
        }
        var name = folder.getFileName().toString();
        try (var siblings = Files.list(parent)) {
            return siblings.map(path -> path.getFileName().toString())
                    .filter(sibling -> sibling.startsWith(name))
                    .map(sibling -> SUFFIX.matcher(sibling.substring(name.length())))
                    .filter(matcher -> matcher.matches())
                    .map(matcher -> matcher.group(1))
                    .distinct()
                    .sorted()
                    .map(key -> of(folder, key, disk))
                    .collect(Collectors.toList());
        }
    }

    /** Puts the new folder in its place; when that fails, the old one is back where it was. */
    void run() throws IOException {
        boolean replaces = isThere(folder);
        if (replaces) {
            disk.rename(folder, old);
        }
        try {
            disk.rename(fresh, folder);
        } catch (IOException failure) {
            if (replaces) {
                putBack(failure);
            }
            throw failure;
        }
    }

    private void putBack(IOException failure) {
        try {
            disk.rename(old, folder);
        } catch (IOException another) {
            failure.addSuppressed(another); // the next run puts it back
        }
    }

    /**
     * Finishes what an earlier run began, or undoes it; afterwards neither folder is left, unless it is not ours.
     *
     * @return what could not be cleared away, for the maker to read
     */
    List<String> recover() throws IOException {
        var staging = new Staging(fresh, disk);
        boolean oldIsOurs = isThere(old) && Inventory.of(old).isOurs();
        if (oldIsOurs && isThere(folder) && Inventory.of(folder).isEmpty()) {
            disk.delete(folder);
        }
        if (!isThere(folder)) {
            if (staging.isWhole()) {
                disk.rename(fresh, folder);
            } else if (oldIsOurs) {
                disk.rename(old, folder);
            }
        }
        staging.discard();
        return isThere(folder) ? settle() : List.of();
    }

    /**
     * Clears the old folder away: our files are deleted, all else moves on into the new one.
     *
     * @return what found its place taken and stays behind, for the maker to read
     */
    List<String> settle() throws IOException {
        if (!isThere(old)) {
            return List.of();
        }
        var inventory = Inventory.of(old);
        if (!inventory.isOurs()) {
            return List.of();
        }
        for (var name : inventory.foreignFolders()) {
            disk.makeFolder(folder.resolve(name));
        }
        var stuck = new ArrayList<String>();
        for (var name : inventory.others()) {
            if (!moveOn(name, inventory.vouchedFor(name))) {
                stuck.add("'" + old.resolve(name) + "' was kept there, because '" + folder.resolve(name)
                        + "' is new. Move it to where you want it.");
            }
        }
        if (stuck.isEmpty()) {
            clear(inventory);
        }
        return stuck;
    }

    private boolean moveOn(String name, boolean ours) throws IOException {
        var from = old.resolve(name);
        var to = folder.resolve(name);
        if (ours) {
            disk.delete(from);
        } else if (!Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
            disk.makeFolder(to.getParent());
            disk.rename(from, to);
        } else {
            return false;
        }
        return true;
    }

    private void clear(Inventory inventory) throws IOException {
        for (var name : inventory.foldersInnermostFirst()) {
            disk.delete(old.resolve(name));
        }
        if (inventory.manifest().isPresent()) {
            disk.delete(old.resolve(Manifest.FILE));
        }
        disk.delete(old);
    }

    private static boolean isThere(Path path) {
        return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
    }
}
