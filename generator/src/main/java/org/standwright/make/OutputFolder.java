package org.standwright.make;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;

/**
 * A folder of files that is replaced whole or not at all.
 *
 * <p>The new files are written into {@code DIR.new-k} beside it, then two renames put that folder in the place of the
 * old one. A run that is killed in between leaves either the old files or the new ones, and the next run clears up.
 * {@code manifest.json} in the folder tells our files from others; others, and ours that were changed, are never
 * deleted: they move on into the new folder under their own names.
 */
public final class OutputFolder {
    private final Path given;
    private final Disk disk;

    private OutputFolder(Path given, Disk disk) {
        this.given = given;
        this.disk = disk;
    }

    public static OutputFolder at(Path folder) {
        return at(folder, new Disk());
    }

    static OutputFolder at(Path folder, Disk disk) {
        return new OutputFolder(folder, disk);
    }

    /** Throws an {@link OutputException} when the folder is not one that may be replaced; writes nothing. */
    public void check() {
        try {
            examine(List.of());
        } catch (IOException failure) {
            throw new OutputException("could not look into '" + given + "': ", failure);
        }
    }

    /**
     * Makes the folder hold exactly these files beside what is not ours.
     *
     * @return what the maker should know about files that could not be put where they belong
     */
    public List<String> replaceWith(List<OutputFile> files) {
        try {
            var folder = examine(files);
            var notes = new ArrayList<String>();
            for (var swap : Swap.leftBeside(folder, disk)) {
                notes.addAll(swap.recover());
            }
            examine(files); // what an earlier run has left is in its place by now
            var swap = Swap.of(folder, newKey(), disk);
            stage(swap, files);
            notes.addAll(settle(swap));
            return notes;
        } catch (IOException failure) {
            throw new OutputException(
                    "could not write '" + given + "'; what it held before is kept. Reason: ", failure);
        }
    }

    private void stage(Swap swap, List<OutputFile> files) throws IOException {
        var staging = new Staging(swap.fresh(), disk);
        try {
            staging.fill(files);
            swap.run();
        } catch (IOException | RuntimeException failure) {
            try {
                staging.discard();
            } catch (IOException another) {
                failure.addSuppressed(another); // the next run removes it
            }
            throw failure;
        }
    }

    private List<String> settle(Swap swap) {
        try {
            return swap.settle();
        } catch (IOException failure) {
            return List.of("the new files are in '" + given + "', but '" + swap.old()
                    + "' could not be cleared away; the next run tries again. Reason: "
                    + OutputException.reason(failure));
        }
    }

    /** Returns where the folder really is. */
    private Path examine(List<OutputFile> files) throws IOException {
        if (Files.isSymbolicLink(given)) {
            throw new OutputException("'" + given + "' is a symbolic link. Name the folder it leads to instead.");
        }
        if (Files.exists(given, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(given)) {
            throw new OutputException("'" + given + "' is a file, not a folder. Choose another name.");
        }
        var folder = real();
        if (Path.of("").toRealPath().startsWith(folder)) {
            throw new OutputException("'" + given + "' is the folder you are in, or holds it, and cannot be swapped."
                    + " Choose a folder inside it, as in --out out.");
        }
        if (Files.isDirectory(folder)) {
            examine(Inventory.of(folder), files);
        }
        return folder;
    }

    private void examine(Inventory present, List<OutputFile> files) throws IOException {
        if (!present.isOurs()) {
            throw new OutputException("'" + given + "' holds files but no " + Manifest.FILE
                    + " of Standwright, so it is left alone. Choose an empty or a new folder.");
        }
        new Clash(files).refuse(given, present.foreign(), present.foreignFolders());
    }

    private Path real() throws IOException {
        if (Files.isDirectory(given)) {
            return given.toRealPath();
        }
        var plain = given.toAbsolutePath().normalize();
        var parent = plain.getParent();
        return Files.isDirectory(parent) ? parent.toRealPath().resolve(plain.getFileName()) : plain;
    }

    private static String newKey() {
        return HexFormat.of()
                .toHexDigits(ThreadLocalRandom.current().nextLong())
                .substring(4);
    }
}
