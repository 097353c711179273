package org.standwright.file.text;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Collects what is wrong with one file, and with the presets it names: the first word about a field counts. */
public final class Problems {
    private static final int LONGEST_VALUE = 40;

    private final String file;
    private final Positions positions;
    private final List<FileProblem> own = new ArrayList<>();
    private final Set<String> told = new HashSet<>();
    private final Set<FileProblem> others = new LinkedHashSet<>();

    public Problems(String file, Positions positions) {
        this.file = file;
        this.positions = positions;
    }

    /** A value that breaks a rule. */
    public void value(String pointer, JsonNode value, String rule, String wayOut) {
        add(pointer, positions.value(pointer), shown(value), rule, wayOut);
    }

    /** A value that breaks a rule, shown as {@code text}. */
    public void value(String pointer, String text, String rule, String wayOut) {
        add(pointer, positions.value(pointer), text, rule, wayOut);
    }

    /** A key that should not be there, or that should be, or that stands twice. */
    public void key(String pointer, Position position, String rule, String wayOut) {
        add(pointer, position, "", rule, wayOut);
    }

    /** A whole sentence about a field, as a problem of its own. */
    public FileProblem about(String pointer, String sentence) {
        var rule = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return new FileProblem(file, Optional.of(positions.value(pointer)), Pointer.readable(pointer), "", rule, "");
    }

    public void addAll(List<FileProblem> ofAnotherFile) {
        others.addAll(ofAnotherFile);
    }

    /** Throws everything collected, if there is anything: this file's in reading order, then those of its presets. */
    public void throwIfAny() {
        var all = new ArrayList<>(own);
        all.sort(
                Comparator.comparing((FileProblem problem) -> problem.position().orElseThrow(), inReadingOrder()));
        all.addAll(others);
        if (!all.isEmpty()) {
            throw new DesignFileException(all);
        }
    }

    private void add(String pointer, Position position, String value, String rule, String wayOut) {
        if (told.add(pointer)) {
            own.add(new FileProblem(file, Optional.of(position), Pointer.readable(pointer), value, rule, wayOut));
        }
    }

    private static Comparator<Position> inReadingOrder() {
        return Comparator.comparingInt(Position::line).thenComparingInt(Position::column);
    }

    /** A value as its writer sees it, shortened; what cannot be seen is a question mark. */
    public static String shown(JsonNode value) {
        if (value.isObject()) {
            return "an object";
        }
        if (value.isArray()) {
            return value.isEmpty() ? "an empty list" : "a list";
        }
        var text = value.toString().replaceAll("[\\p{Cc}\\p{Cf}]", "?");
        return text.length() <= LONGEST_VALUE ? text : text.substring(0, LONGEST_VALUE) + "…";
    }
}
