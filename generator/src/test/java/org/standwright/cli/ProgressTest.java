package org.standwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.make.OutputFile;

class ProgressTest {
    private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
    private final Progress progress = Progress.on(new PrintStream(shown, true, StandardCharsets.UTF_8));

    @Test
    void keepsStillWhenSomethingIsQuick() {
        assertThat(progress.during("Working out", () -> 42)).isEqualTo(42);
        assertThat(shown.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void showsWhatLastsForMoreThanASecond() {
        progress.during("Working out", () -> pause());
        assertThat(shown.toString(StandardCharsets.UTF_8)).contains("Working out");
    }

    @Test
    void countsFiles() {
        var files = List.of(new OutputFile("a", out -> pause()), new OutputFile("b", out -> pause()));
        progress.writing(files, counted -> {
            counted.forEach(ProgressTest::write);
            return 0;
        });
        assertThat(shown.toString(StandardCharsets.UTF_8)).contains("Writing files", "1/2");
    }

    private static void write(OutputFile file) {
        try {
            file.content().writeTo(new ByteArrayOutputStream());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static int pause() {
        try {
            Thread.sleep(1500);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
        return 0;
    }
}
