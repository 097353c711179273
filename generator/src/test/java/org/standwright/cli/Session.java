package org.standwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A folder and a person at the command line in it, for tests: {@code T} in a command is the folder. */
final class Session {
    /** A stand that is quick to work out; working height and caster are left open. */
    static final String DESIGN = """
            {
              "version": 1, "kind": "stand", "name": "small/stand", "unit": "mm",
              "machine": { "preset": "bench-grinder" },
              "workingHeight": "%s",
              "plan": { "width": "500 mm", "depth": "450 mm" },
              "support": { "kind": "casters", "caster": %s },
              "carcass": { "sheet": "birch-18", "back": "birch-6.5" },
              "worktop": { "sheet": "birch-18", "layers": 1 },
              "bays": [{ "contents": [{ "kind": "equal-drawers", "count": 1 }] }],
              "drawers": { "box": "birch-12", "bottom": "birch-6.5", "front": "birch-18", "hang": { "kind": "slides", "slide": "slide-45-full" },
                           "mount": "overlay" },
              "screws": { "panel": "screw-4", "slide": "slide-screw-4" },
              "saw": { "kerf": "3.2 mm", "trim": "5 mm" },
              "loads": { "drawers": 150 },
              "steady": { "anchor": "wall" }
            }
            """;

    static final String CASTER = "\"caster-100\"";

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    private final Path folder;

    Session(Path folder) {
        this.folder = folder;
        write("stand.json", DESIGN.formatted("900 mm", CASTER));
    }

    /** Returns the exit code. */
    int run(String command) {
        var args = Stream.of(command.split(" "))
                .filter(arg -> !arg.isEmpty())
                .map(arg -> arg.replaceFirst("^T(?=/|$)", folder.toString()))
                .toArray(String[]::new);
        return new Run(new PrintWriter(out), new PrintWriter(err), Progress.silent()).run(args);
    }

    void write(String name, String text) {
        try {
            var file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    String read(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** What lies in one of its folders, sorted. */
    List<String> names(String name) {
        try (var entries = Files.list(folder.resolve(name))) {
            return entries.map(path -> path.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Everything in it, at any depth, sorted. */
    List<String> tree() {
        try (var paths = Files.walk(folder)) {
            return paths.map(Path::toString).sorted().toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
