package org.standwright.file.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A text and the name that messages give it.
 *
 * @param file path as the user gave it
 */
public record SourceText(String file, String text) {
    /** More than any design file needs, 4 MB. */
    static final int MOST_BYTES = 4 * 1024 * 1024;

    private static final String BYTE_ORDER_MARK = "\ufeff";

    /** Reads a file of at most {@link #MOST_BYTES}. */
    public static SourceText read(Path path) {
        var file = path.toString();
        if (Files.isDirectory(path)) {
            throw refused(file, "is a folder, but must be a file", "Name a .json file in it.");
        }
        if (!Files.exists(path)) {
            throw refused(
                    file, "does not exist", NearestName.hint(path.getFileName().toString(), Folder.files(path)));
        }
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw tooLarge(file);
            }
            try (var in = Files.newInputStream(path)) {
                return read(file, in);
            }
        } catch (IOException e) {
            throw refused(file, "cannot be read", "Look at its permissions, and whether its disk is there.");
        }
    }

    public static SourceText read(String file, InputStream in) throws IOException {
        var bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw tooLarge(file);
        }
        return new SourceText(file, decoded(file, bytes));
    }

    public SourceText {
        text = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        if (text.length() > MOST_BYTES) {
            throw tooLarge(file);
        }
        if (text.isBlank()) {
            throw refused(file, "is empty", "Start with a file from presets/stands.");
        }
    }

    private static String decoded(String file, byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw refused(file, "is no text in UTF-8", "Save it as UTF-8, which editors offer when saving.");
        }
    }

    private static DesignFileException tooLarge(String file) {
        return refused(file, "is larger than 4 MB", "A design file is a few kilobytes; is this the right one?");
    }

    private static DesignFileException refused(String file, String rule, String wayOut) {
        return new DesignFileException(FileProblem.whole(file, rule, wayOut));
    }
}
