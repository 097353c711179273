package org.standwright.make;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.standwright.Presets;
import org.standwright.bench.Timing;
import org.standwright.file.FileKind;

/**
 * How long each format takes, warm, and how many bytes it makes: one row a format, whichever there are, for a product that
 * is worked out; its files one after the other. The last row is all that is written when nobody says what, side by side, as
 * a run does.
 */
final class FormatBench {
    private static final String USUAL_PRESET = "mitre-saw-stand";
    private static final int FEWEST = 20;
    private static final int MILLIS = 2000;
    /** What all files of the largest preset may take, ms. */
    private static final int AIM = 700;

    private FormatBench() {}

    /** The name of a stand among the presets, or nothing. */
    public static void main(String[] args) {
        var name = args.length > 0 ? args[0] : USUAL_PRESET;
        var preset = Presets.shipped().list(FileKind.STAND).stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no preset stand is called '" + name + "'."));
        var product = Product.of(Presets.design(preset));
        System.out.println(name + ": each format by itself, warm, and what it writes");
        System.out.printf("%-10s %6s %12s %10s %10s%n", "format", "files", "bytes", "median ms", "p95 ms");
        for (var format : Format.values()) {
            print(format.word(), () -> Format.files(EnumSet.of(format), product));
        }
        print("all usual", () -> Format.ready(Format.usual(), product));
        System.out.println("aim of all usual ones: " + AIM + " ms");
    }

    private static void print(String word, Supplier<List<OutputFile>> files) {
        var timing = Timing.warm(() -> files.get().forEach(FormatBench::bytes), FEWEST, MILLIS);
        var made = files.get();
        System.out.printf(
                Locale.ROOT,
                "%-10s %6d %12d %10.2f %10.2f%n",
                word,
                made.size(),
                made.stream().mapToLong(FormatBench::bytes).sum(),
                timing.median(),
                timing.p95());
    }

    private static long bytes(OutputFile file) {
        var out = new ByteArrayOutputStream();
        try {
            file.content().writeTo(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.size();
    }
}
