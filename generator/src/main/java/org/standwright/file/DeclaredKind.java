package org.standwright.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** The field "kind" of a file, read without reading the rest. */
final class DeclaredKind {
    private DeclaredKind() {}

    /** Empty when the file names none, or cannot be read up to there. */
    static Optional<String> of(Path file) {
        try (var parser = new JsonFactory().createParser(file.toFile())) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                boolean found = parser.currentName().equals("kind");
                parser.nextToken();
                if (found) {
                    return Optional.ofNullable(parser.getValueAsString());
                }
                parser.skipChildren();
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.empty(); // whoever reads the file as a preset says what is wrong with it
        }
    }
}
