package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standwright.file.text.SourceText;

class BuiltInPresetsTest {
    @TempDir
    Path home;

    @Test
    void areFoundInAJarEvenWithoutEntriesForItsFolders() throws IOException {
        var file = home.resolve("program with blanks.jar");
        try (var jar = new JarOutputStream(Files.newOutputStream(file))) {
            add(jar, "presets/README.md", "# Presets");
            add(jar, "presets/sheets/oak-19.json", "{ }");
            add(jar, "presets/sheets/ash-19.json", "{ }");
            add(jar, "presets/screws/screw-5.json", "{ }");
        }
        try (var program = new URLClassLoader(new URL[] {file.toUri().toURL()}, null)) {
            var presets = new BuiltInPresets(program);

            assertThat(presets.names(FileKind.SHEET)).containsExactly("ash-19", "oak-19");
            assertThat(presets.names(FileKind.SLIDE)).isEmpty();
            assertThat(presets.has(FileKind.SCREW, "screw-5")).isTrue();
            assertThat(presets.has(FileKind.SCREW, "oak-19")).isFalse();
            assertThat(presets.read(FileKind.SHEET, "ash-19"))
                    .isEqualTo(new SourceText("presets/sheets/ash-19.json", "{ }"));
        }
    }

    private static void add(JarOutputStream jar, String name, String text) throws IOException {
        jar.putNextEntry(new ZipEntry(name));
        jar.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
