package org.standwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standwright.Presets;

/** The program itself, killed while it makes a preset's stand over the files of another. */
class KilledMakeTest {
    private static final int KILLS = "full".equals(System.getProperty("standwright.random")) ? 10 : 4;
    private static final String FORMATS = "csv,txt,json,svg";

    private Path folder;
    private Session session;

    @BeforeEach
    void open(@TempDir Path temporary) throws IOException {
        folder = temporary.toRealPath();
        session = new Session(folder);
        session.write("planer.json", Presets.shipped().show("stand/planer-stand"));
        makeInOneGo();
    }

    @Test
    void leavesWholeFilesToTheNextRun() throws IOException, InterruptedException {
        var random = new SplittableRandom(11);
        for (int kill = 0; kill < KILLS; kill++) {
            var process = start();
            if (kill % 2 == 0) {
                process.waitFor(random.nextInt(1500), TimeUnit.MILLISECONDS);
            } else {
                waitUntilItWrites(process);
                Thread.sleep(random.nextInt(40));
            }
            process.destroyForcibly().waitFor();

            assertThat(hasWholeFiles()).as("kill %d left %s", kill, beside()).isTrue();
            makeInOneGo();
            assertThat(isWhole(folder.resolve("out"))).isTrue();
            assertThat(beside()).containsExactly("out");
        }
    }

    private void makeInOneGo() {
        assertThat(session.run("make T/stand.json --out T/out --quiet --only " + FORMATS))
                .as(session.err.toString())
                .isZero();
    }

    private Process start() throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "make",
                        folder.resolve("planer.json").toString(),
                        "--out",
                        folder.resolve("out").toString(),
                        "--only",
                        FORMATS)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private void waitUntilItWrites(Process process) throws IOException, InterruptedException {
        while (process.isAlive() && beside().equals(List.of("out"))) {
            Thread.sleep(1);
        }
    }

    /** The output folder, or the one that was about to take or to leave its place. */
    private boolean hasWholeFiles() throws IOException {
        if (Files.exists(folder.resolve("out"))) {
            return isWhole(folder.resolve("out"));
        }
        for (var name : beside()) {
            if (isWhole(folder.resolve(name))) {
                return true;
            }
        }
        return false;
    }

    private List<String> beside() throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.map(path -> path.getFileName().toString())
                    .filter(name -> name.startsWith("out"))
                    .sorted()
                    .collect(Collectors.toList());
        }
    }

    /** Whether a folder holds what its manifest lists, byte for byte, and no other file. */
    private static boolean isWhole(Path output) throws IOException {
        var manifest = output.resolve("manifest.json");
        if (!Files.exists(manifest)) {
            return false;
        }
        var listed = new TreeSet<String>();
        for (var file : new JsonMapper().readTree(manifest.toFile()).get("files")) {
            var name = file.get("name").asText();
            listed.add(name);
            if (!Files.exists(output.resolve(name))
                    || !sha256(output.resolve(name)).equals(file.get("sha256").asText())) {
                return false;
            }
        }
        listed.add("manifest.json");
        return listed.size() > 1 && listed.equals(files(output));
    }

    private static TreeSet<String> files(Path output) throws IOException {
        try (var paths = Files.walk(output)) {
            return paths.filter(Files::isRegularFile)
                    .map(path -> output.relativize(path).toString().replace('\\', '/'))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError("every Java has SHA-256", impossible);
        }
    }
}
