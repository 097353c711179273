package org.standwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The whole {@code make} of a preset as its user sees it, Java start included: seconds, and peak memory on Linux. */
final class MakeBench {
    private static final int RUNS = 5;
    private static final Path JAR = Path.of("target", "standwright.jar");

    private MakeBench() {}

    private record Run(double seconds, double megabytes) {}

    static void print(String preset) throws IOException, InterruptedException {
        if (!Files.exists(JAR)) {
            System.out.println("no " + JAR + ": build it with mvn -q -B -DskipTests package");
            return;
        }
        once(preset);
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            runs.add(once(preset));
        }
        System.out.printf(
                Locale.ROOT,
                "%-20s %8.2f %8.2f %8.2f %10.0f%n",
                preset,
                runs.stream().mapToDouble(Run::seconds).min().orElseThrow(),
                runs.stream()
                        .mapToDouble(Run::seconds)
                        .sorted()
                        .skip(RUNS / 2)
                        .findFirst()
                        .orElseThrow(),
                runs.stream().mapToDouble(Run::seconds).max().orElseThrow(),
                runs.stream().mapToDouble(Run::megabytes).max().orElseThrow());
    }

    static void printHead() {
        System.out.println("make, whole process: seconds (aim 3) and peak memory (aim 400 MB)");
        System.out.printf("%-20s %8s %8s %8s %10s%n", "preset", "min s", "median", "max", "peak MB");
    }

    private static Run once(String preset) throws IOException, InterruptedException {
        var out = Files.createTempDirectory("make-bench");
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        long start = System.nanoTime();
        var process = new ProcessBuilder(
                        java,
                        "-jar",
                        JAR.toString(),
                        "make",
                        "../presets/stands/" + preset + ".json",
                        "--quiet",
                        "--out",
                        out.resolve("made").toString())
                .inheritIO()
                .start();
        double peak = 0;
        while (process.isAlive()) {
            peak = Math.max(peak, peakMegabytes(process.pid()));
            Thread.sleep(5);
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        if (process.waitFor() > 1) {
            throw new IllegalStateException("make of " + preset + " ended with " + process.exitValue());
        }
        delete(out);
        return new Run(seconds, peak);
    }

    /** The kernel's high-water mark of resident memory; 0 where there is no /proc. */
    private static double peakMegabytes(long pid) {
        try (var lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
            return lines.filter(line -> line.startsWith("VmHWM:"))
                    .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024)
                    .findFirst()
                    .orElse(0);
        } catch (IOException gone) {
            return 0;
        }
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
