package org.standwright.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.standwright.part.Part;
import org.standwright.solid.Fineness;
import org.standwright.solid.ToolsJson;

/** The manifold-3d library in a process of its own; it gets the same blanks and tools that we cut with. */
final class OtherKernel implements AutoCloseable {
    private static final Path PROGRAMS = Path.of("src", "test", "node");
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What the library makes of a part. */
    record Size(String status, double volume, int triangles, int simplified) {}

    private final Process process;
    private final Path tools;
    private final Path complaints;
    private final BufferedReader answers;
    private final Writer questions;

    private OtherKernel(Collection<Part> parts) throws IOException {
        tools = Files.createTempFile("tools", ".json");
        complaints = Files.createTempFile("other-kernel", ".log");
        tools.toFile().deleteOnExit();
        complaints.toFile().deleteOnExit();
        ToolsJson.write(parts, Fineness.FILE, tools);
        process = new ProcessBuilder("bash", PROGRAMS.resolve("run").toString(), "bench.mjs", tools.toString())
                .redirectError(complaints.toFile())
                .start();
        answers = process.inputReader(StandardCharsets.UTF_8);
        questions = process.outputWriter(StandardCharsets.UTF_8);
    }

    /** Ready to answer; prints in one line why it isn't, when Node or the library can't be had. */
    static Optional<OtherKernel> start(Collection<Part> parts) {
        try {
            var kernel = new OtherKernel(parts);
            if (kernel.answers.readLine() != null) {
                return Optional.of(kernel);
            }
            var why = Files.readString(kernel.complaints).strip();
            kernel.close();
            skipped(why.substring(why.lastIndexOf('\n') + 1));
        } catch (IOException e) {
            skipped(e.getMessage());
        }
        return Optional.empty();
    }

    private static void skipped(String why) {
        System.out.println("comparison with manifold-3d skipped: " + why);
    }

    /** Warms both ways of cutting up for so long and chooses the faster one for this part. */
    String warm(Part part, int millis) {
        return ask("warm " + millis + " " + part.name()).get("way").asText();
    }

    List<Double> runs(Part part, int forMillis) {
        var millis = ask("time " + forMillis + " " + part.name()).get("millis");
        return StreamSupport.stream(millis.spliterator(), false)
                .map(JsonNode::asDouble)
                .toList();
    }

    Size size(Part part) {
        var answer = ask("size " + part.name());
        return new Size(
                answer.get("status").asText(),
                answer.get("volume").asDouble(),
                answer.get("triangles").asInt(),
                answer.get("simplified").asInt());
    }

    private JsonNode ask(String question) {
        try {
            questions.write(question + "\n");
            questions.flush();
            var answer = answers.readLine();
            if (answer == null) {
                throw new IOException("no answer to '" + question + "': "
                        + Files.readString(complaints).strip());
            }
            return JSON.readTree(answer);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** It ends by itself once it can't be asked any more. */
    @Override
    public void close() throws IOException {
        try {
            questions.close();
        } catch (IOException ended) {
            process.destroy();
        }
        process.onExit().join();
    }
}
