package org.standwright.viewer.document;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Texts of files on disk; a file is there whole, as it was before or as it is now. */
public final class DesignText {
    /** A design file longer than this was chosen by mistake. */
    private static final long LONGEST = 4_000_000;

    /** Some editors put it before a text in UTF-8; it says nothing. */
    private static final String MARK = "\uFEFF";

    private DesignText() {}

    /** @throws IOException with the reason in words, also for what is no text in UTF-8 */
    public static String read(Path file) throws IOException {
        if (Files.size(file) > LONGEST) {
            throw new IOException("'" + file + "' is larger than any design file");
        }
        try {
            var text = Files.readString(file);
            return text.startsWith(MARK) ? text.substring(MARK.length()) : text;
        } catch (CharacterCodingException other) {
            throw new IOException("it is no text in UTF-8. Save it as UTF-8 where it was written", other);
        }
    }

    /** Writes beside the file, then puts it in its place. */
    public static void write(Path file, String text) throws IOException {
        var whole = file.toAbsolutePath();
        var fresh = Files.createTempFile(whole.getParent(), "." + whole.getFileName(), ".new-text");
        try {
            Files.writeString(fresh, text);
            Files.move(fresh, target(whole), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** Behind a link, the file that it leads to. */
    private static Path target(Path file) throws IOException {
        return Files.exists(file) ? file.toRealPath() : file;
    }
}
