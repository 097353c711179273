package org.standwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.standwright.make.OutputFile;

/** What a writer of UTF-8 writes, as text to print. */
final class Texts {
    private Texts() {}

    static String of(OutputFile.Content content) throws IOException {
        var bytes = new ByteArrayOutputStream();
        content.writeTo(bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
