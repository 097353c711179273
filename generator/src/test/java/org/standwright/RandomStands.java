package org.standwright;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Design files at random, one a seed, as a maker might write them: metric or in inches, any support, one to three bays
 * of any contents, overlay or inset, one or two worktop layers, sheets measured a little off. Not every one can be
 * built; a test that needs one that can asks for the next attempt.
 */
final class RandomStands {
    private final SplittableRandom random;
    private final boolean metric;

    private RandomStands(long seed, int attempt) {
        this.random = new SplittableRandom(1_000_003 * seed + attempt);
        this.metric = random.nextBoolean();
    }

    /** The text of a design file. */
    static String text(long seed, int attempt) {
        return new RandomStands(seed, attempt).text("random stand " + seed + "." + attempt);
    }

    private String text(String name) {
        return """
                {
                  "version": 1,
                  "kind": "stand",
                  "name": "%s",
                  "unit": "%s",
                  "machine": %s,
                  "workingHeight": %s,
                  "plan": { "width": %s, "depth": %s },
                  "support": %s,
                  "carcass": { "sheet": %s, "back": %s, "housing": %s },
                  "worktop": { "sheet": %s, "layers": %d, "overhang": { "front": %s, "back": %s, "left": %s, "right": %s } },
                  "bays": [%s],
                  "drawers": { "box": %s, "bottom": %s, "front": %s, "hang": { "kind": "slides", "slide": "%s" }, "mount": "%s", "gap": %s },
                  "screws": { "panel": "%s", "slide": "%s" },
                  "saw": { "kerf": %s, "trim": %s }
                }
                """.formatted(
                        name,
                        metric ? "mm" : "in",
                        machine(),
                        length(560, 1250),
                        length(420, 1400),
                        length(400, 760),
                        support(),
                        thick(),
                        thin(),
                        length(4, 8),
                        thick(),
                        1 + random.nextInt(2),
                        length(0, 40),
                        length(0, 20),
                        length(0, 60),
                        length(0, 60),
                        bays(),
                        boxes(),
                        thin(),
                        thick(),
                        metric ? "slide-45-full" : "slide-1-3-4-full-inch",
                        random.nextBoolean() ? "overlay" : "inset",
                        length(2, 4),
                        metric ? "screw-4" : "screw-8",
                        metric ? "slide-screw-4" : "slide-screw-6",
                        length(1.5, 3.5),
                        length(0, 10));
    }

    private String machine() {
        boolean table = random.nextInt(4) > 0;
        return """
                { "name": "machine", "base": { "width": %s, "depth": %s },
                    "envelope": { "width": %s, "depth": %s, "height": %s }, "mass": %d,
                    "reference": { "kind": "%s", "height": %s }, "feet": %s }""".formatted(
                        length(200, 600),
                        length(200, 500),
                        length(600, 900),
                        length(500, 800),
                        length(300, 900),
                        10 + random.nextInt(80),
                        table ? "table" : "spindle",
                        length(0, 300),
                        random.nextBoolean() ? "0" : length(1, 30));
    }

    private String support() {
        return switch (random.nextInt(4)) {
            case 0 -> "{ \"kind\": \"casters\", \"caster\": \"caster-100\" }";
            case 1 -> "{ \"kind\": \"levelers\", \"leveler\": \"leveler-m10\" }";
            case 2 ->
                "{ \"kind\": \"plinth\", \"height\": " + length(60, 150) + ", \"toeSpace\": " + length(40, 90) + " }";
            default -> "{ \"kind\": \"none\" }";
        };
    }

    private String bays() {
        int count = 1 + random.nextInt(3);
        return IntStream.range(0, count)
                .mapToObj(i -> i > 0 && random.nextInt(3) == 0
                        ? "{ \"width\": " + length(180, 450) + ", \"contents\": [" + contents() + "] }"
                        : "{ \"contents\": [" + contents() + "] }")
                .collect(Collectors.joining(", "));
    }

    private String contents() {
        var given = random.nextInt(3) > 0 ? "" : "{ \"kind\": \"drawers\", \"fronts\": [" + length(90, 160) + "] }, ";
        var rest = random.nextBoolean()
                ? "{ \"kind\": \"equal-drawers\", \"count\": " + (1 + random.nextInt(6)) + " }"
                : "{ \"kind\": \"filled-drawers\", \"front\": " + length(80, 200) + " }";
        return given + rest;
    }

    /** A panel sheet, often measured off its preset's thickness. */
    private String thick() {
        return measured(metric ? "birch-18" : "ply-23-32", metric ? 17.1 : 17.5, metric ? 18.7 : 19.0);
    }

    private String boxes() {
        return measured(metric ? "birch-12" : "ply-15-32", metric ? 11.6 : 11.6, metric ? 12.5 : 12.6);
    }

    private String thin() {
        return measured(metric ? "birch-6.5" : "ply-1-4", metric ? 6.0 : 5.0, metric ? 6.8 : 6.4);
    }

    private String measured(String preset, double least, double most) {
        return random.nextInt(3) == 0
                ? "\"" + preset + "\""
                : "{ \"preset\": \"" + preset + "\", \"thickness\": "
                        + quoted(String.format(Locale.ROOT, "%.2f mm", random.nextDouble(least, most))) + " }";
    }

    /** A length that a maker would write: whole or half millimetres, or sixteenths of an inch. */
    private String length(double from, double to) {
        double mm = from == to ? from : random.nextDouble(from, to);
        if (metric) {
            return quoted(String.format(Locale.ROOT, "%.1f mm", Math.round(mm * 2) / 2.0));
        }
        long sixteenths = Math.round(mm / 25.4 * 16);
        return quoted(sixteenths / 16 + " " + sixteenths % 16 + "/16 in");
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }
}
