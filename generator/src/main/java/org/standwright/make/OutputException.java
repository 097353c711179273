package org.standwright.make;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Files that could not be handed over; what was there before is still there. The message is for the maker. */
public final class OutputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public OutputException(String message) {
        super(message);
    }

    OutputException(String message, IOException cause) {
        super(message + reason(cause), cause);
    }

    /** What the system says, in words: 'No space left on device (parts/A.stl)'. */
    static String reason(IOException failure) {
        if (!(failure instanceof FileSystemException onFile)) {
            return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
        }
        return words(onFile) + " (" + onFile.getFile() + ")";
    }

    private static String words(FileSystemException failure) {
        if (failure instanceof AccessDeniedException) {
            return "no permission";
        }
        if (failure instanceof NoSuchFileException) {
            return "no such file or folder";
        }
        if (failure instanceof FileAlreadyExistsException) {
            return "something of that name is there already";
        }
        if (failure instanceof NotDirectoryException) {
            return "not a folder";
        }
        var reason = failure.getReason();
        return reason == null ? failure.getClass().getSimpleName() : reason;
    }
}
