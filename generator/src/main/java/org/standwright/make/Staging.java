package org.standwright.make;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The new folder while it is being filled. Its first file is a marker that says so and its last step takes the marker
 * away: a folder with the marker is unfinished and ours.
 */
record Staging(Path folder, Disk disk) {
    static final String MARKER = ".standwright-unfinished";

    private static final String MARKER_TEXT =
            "A run of Standwright was filling this folder. The next one removes it.\n";

    /** Writes all files, then the manifest. */
    void fill(List<OutputFile> files) throws IOException {
        disk.makeFolder(folder);
        disk.write(folder.resolve(MARKER), text(MARKER_TEXT));
        var entries = new ArrayList<Manifest.Entry>();
        for (var file : files) {
            var path = folder.resolve(file.name());
            if (!Files.isDirectory(path.getParent())) {
                disk.makeFolder(path.getParent());
            }
            disk.write(path, file.content());
            entries.add(Manifest.Entry.of(folder, file.name()));
        }
        disk.write(folder.resolve(Manifest.FILE), Manifest.of(entries)::writeTo);
        disk.delete(folder.resolve(MARKER));
    }

    /** Whether everything has been written. */
    boolean isWhole() throws IOException {
        if (!isThere() || isMarked()) {
            return false;
        }
        var manifest = Manifest.in(folder);
        return manifest.isPresent() && manifest.get().isWholeIn(folder);
    }

    /** Removes the folder if it is recognisably ours: marked, whole and nothing else in it, or empty. */
    void discard() throws IOException {
        if (!isThere()) {
            return;
        }
        var inventory = Inventory.of(folder);
        if (!isMarked() && !inventory.isEmpty()) {
            if (!isWhole() || !inventory.foreign().isEmpty()) {
                return;
            }
            disk.write(folder.resolve(MARKER), text(MARKER_TEXT));
        }
        remove(inventory);
    }

    /** The marker goes last, so that a removal that was stopped can be taken up again. */
    private void remove(Inventory inventory) throws IOException {
        for (var name : inventory.others()) {
            if (!name.equals(MARKER)) {
                disk.delete(folder.resolve(name));
            }
        }
        for (var name : inventory.foldersInnermostFirst()) {
            disk.delete(folder.resolve(name));
        }
        if (inventory.manifest().isPresent()) {
            disk.delete(folder.resolve(Manifest.FILE));
        }
        if (isMarked()) {
            disk.delete(folder.resolve(MARKER));
        }
        disk.delete(folder);
    }

    private boolean isThere() {
        return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS);
    }

    private boolean isMarked() {
        return Files.isRegularFile(folder.resolve(MARKER), LinkOption.NOFOLLOW_LINKS);
    }

    private static OutputFile.Content text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
