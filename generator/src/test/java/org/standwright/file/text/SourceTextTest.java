package org.standwright.file.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standwright.file.DesignFile;
import org.standwright.file.DesignFiles;
import org.standwright.file.PresetLibrary;
import org.standwright.file.SampleDesign;

class SourceTextTest {
    @TempDir
    Path home;

    @Test
    void readsAFile() throws IOException {
        Files.writeString(home.resolve("stand.json"), SampleDesign.TEXT);

        assertThat(read("stand.json").file())
                .isEqualTo(home.resolve("stand.json").toString());
    }

    @Test
    void refusesAFileThatIsNotThereAndNamesOneThatIs() throws IOException {
        Files.writeString(home.resolve("planer-stand.json"), "{}");

        assertRefused("planner-stand.json", "does not exist. Did you mean \"planer-stand.json\"?");
    }

    @Test
    void refusesAFolder() throws IOException {
        Files.createDirectory(home.resolve("stands"));

        assertRefused("stands", "is a folder, but must be a file. Name a .json file in it.");
    }

    @Test
    void refusesAFileOfMoreThanFourMegabytes() throws IOException {
        try (var file = new RandomAccessFile(home.resolve("huge.json").toFile(), "rw")) {
            file.setLength(SourceText.MOST_BYTES + 1);
        }

        assertRefused("huge.json", "is larger than 4 MB. A design file is a few kilobytes; is this the right one?");
    }

    @Test
    void readsAFileOfExactlyFourMegabytes() throws IOException {
        var padding = " ".repeat(SourceText.MOST_BYTES - SampleDesign.TEXT.length());
        Files.writeString(home.resolve("large.json"), SampleDesign.TEXT + padding);

        assertThat(read("large.json").design().name()).isEqualTo("Test stand");
    }

    @Test
    void refusesATextInMemoryOfMoreThanFourMegabytes() {
        var text = SampleDesign.TEXT + " ".repeat(SourceText.MOST_BYTES);

        assertThatThrownBy(() -> SampleDesign.read(text)).hasMessageStartingWith("stand.json is larger than 4 MB.");
    }

    @Test
    void refusesAnotherEncoding() throws IOException {
        Files.write(home.resolve("utf16.json"), SampleDesign.TEXT.getBytes(StandardCharsets.UTF_16));

        assertRefused("utf16.json", "is no text in UTF-8. Save it as UTF-8, which editors offer when saving.");
    }

    @Test
    void refusesAnEmptyFile() throws IOException {
        Files.createFile(home.resolve("empty.json"));

        assertRefused("empty.json", "is empty. Start with a file from presets/stands.");
    }

    private void assertRefused(String name, String message) {
        assertThatThrownBy(() -> read(name))
                .isInstanceOf(DesignFileException.class)
                .hasMessage(home.resolve(name) + " " + message);
    }

    private DesignFile read(String name) {
        return DesignFiles.read(home.resolve(name), PresetLibrary.of(home, Optional.empty()));
    }
}
