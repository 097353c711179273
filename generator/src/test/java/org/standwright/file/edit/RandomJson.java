package org.standwright.file.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** Texts of JSON in many layouts, with numbers and letters written in odd ways. */
final class RandomJson {
    private static final List<String> SINGLES = List.of(
            "1.50",
            "-0",
            "1e2",
            "1E+3",
            "0.1",
            "12345678901234567890",
            "true",
            "false",
            "null",
            "\"\"",
            "\"610 mm\"",
            "\"a \\\"quoted\\\" }] word\"",
            "\"back\\\\slash\\\\\"",
            "\"\\u00e9 é €\"",
            "\"{\\n[\"",
            "\"😀 //, :\"");
    private static final List<String> KEYS = List.of(
            "kind", "width", "note", "a/b", "m~n", "", " ", "0", "quo\\\"te", "é", "long-key-of-a-field", "back\\\\");

    private final SplittableRandom random;
    private final String newLine;
    private final Layout layout;

    private enum Layout {
        COMPACT,
        SPACED,
        LINES,
        WILD
    }

    RandomJson(long seed) {
        random = new SplittableRandom(seed);
        newLine = random.nextInt(3) == 0 ? "\r\n" : "\n";
        layout = Layout.values()[random.nextInt(Layout.values().length)];
    }

    SplittableRandom random() {
        return random;
    }

    /** An object or a list. */
    String text() {
        return (layout == Layout.WILD ? blank() : "") + container(3, 0) + (layout == Layout.LINES ? newLine : "");
    }

    /** Anything, on one line. */
    String value() {
        return random.nextInt(3) > 0 ? any(SINGLES) : random.nextBoolean() ? "{ \"x\": [1, { }] }" : "[ ]";
    }

    private String value(int depth, int level) {
        return depth == 0 || random.nextInt(3) == 0 ? any(SINGLES) : container(depth - 1, level);
    }

    private String container(int depth, int level) {
        boolean object = random.nextInt(3) > 0;
        var keys = new ArrayList<>(KEYS);
        var entries = new ArrayList<String>();
        for (int entry = random.nextInt(5); entry > 0; entry--) {
            var key = keys.remove(random.nextInt(keys.size()));
            entries.add((object ? '"' + key + '"' + colon() : "") + value(depth, level + 1));
        }
        var inside = entries.isEmpty() ? "" : joined(entries, object, level);
        return object ? "{" + inside + "}" : "[" + inside + "]";
    }

    private String joined(List<String> entries, boolean object, int level) {
        return switch (layout) {
            case COMPACT -> String.join(",", entries);
            case SPACED -> object ? " " + String.join(", ", entries) + " " : String.join(", ", entries);
            case LINES ->
                entries.stream().collect(Collectors.joining("," + line(level + 1), line(level + 1), line(level)));
            case WILD ->
                entries.stream().map(entry -> blank() + entry + blank()).collect(Collectors.joining(","));
        };
    }

    private String colon() {
        return switch (layout) {
            case COMPACT -> ":";
            case SPACED, LINES -> ": ";
            case WILD -> blank() + ":" + blank();
        };
    }

    private String line(int level) {
        return newLine + "\t".repeat(level);
    }

    private String blank() {
        return any(List.of("", " ", "  ", "\t", newLine, newLine + "  ", newLine + newLine + " "));
    }

    private String any(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }
}
