package org.standwright.viewer.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.standwright.file.form.Row;
import org.standwright.file.text.FileProblem;
import org.standwright.file.text.Pointer;

/** Which row each problem belongs to. */
final class Marks {
    private final Map<String, List<FileProblem>> byPath = new HashMap<>();

    private Marks() {}

    /** Problems of what no row shows belong to the row around it, in the end to the file's. */
    static Marks of(Row file, List<FileProblem> problems) {
        var marks = new Marks();
        problems.forEach(problem -> marks.byPath
                .computeIfAbsent(nearest(file, problem.field()).path(), path -> new ArrayList<>())
                .add(problem));
        return marks;
    }

    /** What is wrong with one row, in words. */
    List<String> at(Row row) {
        return byPath.getOrDefault(row.path(), List.of()).stream()
                .map(problem -> words(row, problem))
                .toList();
    }

    /** How many problems are in the rows inside. */
    int inside(Row row) {
        var start = row.path() + "/";
        return byPath.entrySet().stream()
                .filter(entry -> entry.getKey().startsWith(start))
                .mapToInt(entry -> entry.getValue().size())
                .sum();
    }

    private static String words(Row row, FileProblem problem) {
        boolean isElsewhere = !problem.field().equals(Pointer.readable(row.pointer()));
        var rule = isElsewhere ? problem.field() + ": " + problem.rule() : capital(problem.rule());
        return problem.wayOut().isEmpty() ? rule + "." : rule + ". " + problem.wayOut();
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** The row that shows a field, or else the one around it that does. */
    static Row nearest(Row from, String field) {
        var at = from;
        for (Optional<Row> next = Optional.of(from); next.isPresent(); next = towards(at, field)) {
            at = next.get();
        }
        return at;
    }

    /** The row inside that shows the field or something around it. */
    private static Optional<Row> towards(Row around, String field) {
        return field.isEmpty()
                ? Optional.empty()
                : around.rows().stream().filter(row -> leads(row, field)).findFirst();
    }

    private static boolean leads(Row row, String field) {
        var here = Pointer.readable(row.pointer());
        return field.startsWith(here)
                && (field.length() == here.length() || ".[".indexOf(field.charAt(here.length())) >= 0);
    }
}
