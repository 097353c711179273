package org.standwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A main class started on the same class path in a Java that has done nothing yet. */
final class FreshJvm {
    private FreshJvm() {}

    /** What it prints, without the white space around it. */
    static String output(Class<?> main, String... options) throws IOException {
        var command = new ArrayList<String>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        var process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        var output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        int exit = process.onExit().join().exitValue();
        if (exit != 0) {
            throw new IOException(main.getSimpleName() + " ended with " + exit);
        }
        return output;
    }
}
