package org.standwright.make;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Every step that changes what is on disk, so that the order of steps can be read in one place and stopped between any
 * two.
 */
class Disk {
    /** Makes a folder, and those it lies in. */
    void makeFolder(Path folder) throws IOException {
        Files.createDirectories(folder);
    }

    /** Writes a new file and waits until it has reached the disk. */
    void write(Path file, OutputFile.Content content) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            var out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
            content.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    /** Renames a file or folder in one step; a link is renamed itself. */
    void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Deletes a file, a link or an empty folder. */
    void delete(Path path) throws IOException {
        Files.delete(path);
    }
}
