package org.standwright.make;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which files of a folder are ours, as they were when we wrote them.
 *
 * @param files sorted by name
 */
record Manifest(int version, String kind, List<Entry> files) {
    static final String FILE = "manifest.json";

    private static final int VERSION = 1;
    private static final String KIND = "standwright-output";
    private static final JsonMapper JSON = new JsonMapper();

    /**
     * One file.
     *
     * @param name path inside the folder, parted by '/'
     * @param size bytes
     * @param sha256 64 hexadecimal digits, lower case
     */
    record Entry(String name, long size, String sha256) {
        Entry {
            Objects.requireNonNull(name);
            Objects.requireNonNull(sha256);
        }

        /** What lies in {@code folder} under this name now. */
        static Entry of(Path folder, String name) throws IOException {
            var file = folder.resolve(name);
            return new Entry(name, Files.size(file), sha256(file));
        }

        /** Whether the file is there as it was written. */
        boolean isUnchangedIn(Path folder) throws IOException {
            var file = folder.resolve(name);
            return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && Files.size(file) == size
                    && sha256(file).equals(sha256);
        }

        private static String sha256(Path file) throws IOException {
            try (var in = Files.newInputStream(file)) {
                var digest = MessageDigest.getInstance("SHA-256");
                var block = new byte[1 << 16];
                for (int read = in.read(block); read >= 0; read = in.read(block)) {
                    digest.update(block, 0, read);
                }
                return HexFormat.of().formatHex(digest.digest());
            } catch (NoSuchAlgorithmException impossible) {
                throw new AssertionError("every Java has SHA-256", impossible);
            }
        }
    }

    Manifest {
        if (version != VERSION || !KIND.equals(kind)) {
            throw new IllegalArgumentException("manifest of version " + version + " and kind '" + kind + "'.");
        }
        files = files.stream().sorted(Comparator.comparing(Entry::name)).toList();
    }

    static Manifest of(List<Entry> files) {
        return new Manifest(VERSION, KIND, files);
    }

    /** The manifest of a folder; empty when there is none, or one that is not ours. */
    static Optional<Manifest> in(Path folder) throws IOException {
        var file = folder.resolve(FILE);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try (var in = Files.newInputStream(file)) {
            return Optional.ofNullable(JSON.readValue(in, Manifest.class));
        } catch (JacksonException notOurs) {
            return Optional.empty();
        }
    }

    void writeTo(OutputStream out) throws IOException {
        var lines = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        out.write(JSON.writer(printer).writeValueAsBytes(this));
        out.write("\n".getBytes(StandardCharsets.UTF_8));
    }

    /** Whether the file of this name in {@code folder} is ours and has not been changed since. */
    boolean vouchesFor(String name, Path folder) throws IOException {
        for (var entry : files) {
            if (entry.name().equals(name)) {
                return entry.isUnchangedIn(folder);
            }
        }
        return false;
    }

    /** Whether all the files are there, unchanged. */
    boolean isWholeIn(Path folder) throws IOException {
        for (var entry : files) {
            if (!entry.isUnchangedIn(folder)) {
                return false;
            }
        }
        return true;
    }

    /** Whether one of our files lies in this subfolder. */
    boolean knowsFolder(String name) {
        return files.stream().anyMatch(entry -> entry.name().startsWith(name + "/"));
    }
}
