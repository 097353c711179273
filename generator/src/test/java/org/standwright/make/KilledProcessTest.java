package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real process that writes one folder over and over, and is killed while it does. */
class KilledProcessTest {
    private static final int KILLS = 10;
    private static final int FILES = 12;

    @TempDir
    Path beside;

    @Test
    void leavesWholeFilesAfterEveryKill() throws IOException, InterruptedException {
        var folder = beside.resolve("out");
        var random = new SplittableRandom(10);
        for (int kill = 0; kill < KILLS; kill++) {
            var process = start(folder);
            waitForFirstLine(process);
            Thread.sleep(random.nextInt(60));
            process.destroyForcibly().waitFor();

            if (Files.exists(folder)) {
                assertThat(roundIn(folder)).isPositive();
            }
            Tree.write(folder.resolveSibling("note" + kill), "beside");
            assertThat(OutputFolder.at(folder).replaceWith(round(0))).isEmpty();
            assertThat(roundIn(folder)).isZero();
            assertThat(Tree.names(beside))
                    .filteredOn(name -> name.startsWith("out"))
                    .containsExactly("out");
            Tree.write(folder.resolve("mine" + kill), "kept");
        }
        assertThat(Tree.names(folder))
                .filteredOn(name -> name.startsWith("mine"))
                .hasSize(KILLS);
    }

    /** Which round all files of the folder come from; fails when they come from several or one is cut short. */
    private static int roundIn(Path folder) throws IOException {
        var texts = new ArrayList<String>();
        for (int file = 0; file < FILES; file++) {
            texts.add(Files.readString(folder.resolve("parts/" + file + ".txt")));
        }
        assertThat(texts).allMatch(text -> text.length() > 20_000 && text.equals(texts.get(0)));
        assertThat(Manifest.in(folder).orElseThrow().isWholeIn(folder)).isTrue();
        return Integer.parseInt(texts.get(0).substring(0, texts.get(0).indexOf('\n')));
    }

    private static List<OutputFile> round(int round) {
        var text = (round + "\n").repeat(15_000);
        var files = new ArrayList<OutputFile>();
        for (int file = 0; file < FILES; file++) {
            files.add(Tree.file("parts/" + file + ".txt", text));
        }
        return files;
    }

    private static Process start(Path folder) throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java, "-cp", System.getProperty("java.class.path"), Writing.class.getName(), folder.toString())
                .redirectErrorStream(true)
                .start();
    }

    private static void waitForFirstLine(Process process) throws IOException {
        var reader = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        assertThat(reader.readLine()).isEqualTo("written");
    }

    /** The process: writes round after round until it is killed. */
    static final class Writing {
        private Writing() {}

        public static void main(String[] args) {
            var folder = OutputFolder.at(Path.of(args[0]));
            for (int round = 1; ; round++) {
                folder.replaceWith(round(round));
                if (round == 1) {
                    System.out.println("written");
                }
            }
        }
    }
}
