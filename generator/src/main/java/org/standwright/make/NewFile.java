package org.standwright.make;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A text file that must not be there yet. */
public final class NewFile {
    private NewFile() {}

    /** Writes UTF-8. Throws an {@link OutputException} when the file is there or cannot be written whole. */
    public static void write(Path file, String text) {
        try {
            Files.createFile(file);
        } catch (FileAlreadyExistsException there) {
            throw new OutputException("'" + file + "' is there already and is left as it is. Choose another name.");
        } catch (IOException failure) {
            throw notWritten(file, failure);
        }
        try {
            Files.writeString(file, text);
        } catch (IOException failure) {
            remove(file, failure);
            throw notWritten(file, failure);
        }
    }

    private static void remove(Path file, IOException failure) {
        try {
            Files.delete(file);
        } catch (IOException another) {
            failure.addSuppressed(another);
        }
    }

    private static OutputException notWritten(Path file, IOException failure) {
        return new OutputException("could not write '" + file + "'. Reason: ", failure);
    }
}
