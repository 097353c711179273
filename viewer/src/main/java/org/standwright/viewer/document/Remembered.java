package org.standwright.viewer.document;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * One thing that is remembered in a file of the {@link StateFolder}, as JSON. What cannot be read is forgotten: nothing
 * here is worth a message.
 *
 * @param <T> a record
 */
public record Remembered<T>(Path file, Class<T> type) {
    private static final ObjectMapper MAPPER =
            JsonMapper.builder().addMixIn(Object.class, OtherVersions.class).build();

    /** A newer program may have written more. */
    @JsonIgnoreProperties(ignoreUnknown = true)
    private interface OtherVersions {}

    public Optional<T> recall() {
        try {
            return Files.isRegularFile(file)
                    ? Optional.ofNullable(MAPPER.readValue(Files.readAllBytes(file), type))
                    : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    public void keep(T value) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        DesignText.write(file, MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(value));
    }

    public void forget() throws IOException {
        Files.deleteIfExists(file);
    }
}
