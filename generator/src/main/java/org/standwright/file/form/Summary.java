package org.standwright.file.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A row in a few words, for where it is folded. */
final class Summary {
    private static final int MOST_WORDS = 60;
    private static final List<String> TELLING = List.of("use", "count", "width", "x", "rule", "sheet", "diameter");

    private Summary() {}

    static String of(Row row) {
        var words = switch (row.input()) {
            case LIST -> list(row);
            case GROUP, PRESET -> group(row);
            default -> row.written().orElse("");
        };
        return words.length() <= MOST_WORDS
                ? words
                : words.substring(0, MOST_WORDS - 1).strip() + "…";
    }

    private static String list(Row list) {
        int count = list.rows().size();
        return count == 0
                ? "none"
                : String.join(
                                " · ",
                                list.rows().stream().limit(4).map(Summary::of).toList())
                        + (count > 4 ? " · and " + (count - 4) + " more" : "");
    }

    private static String group(Row group) {
        if (group.written().isPresent() && !group.given().isObject()) {
            return group.written().orElseThrow();
        }
        var words = new ArrayList<String>();
        var kind = group.given().path("kind").asText(group.given().path("style").asText(""));
        var name = Optional.of(group.given().path("name").asText("")).filter(text -> !text.isEmpty());
        var first =
                (Label.of(kind) + name.map(text -> " \u201c" + text + "\u201d").orElse("")).strip();
        words.add(first);
        preset(group).ifPresent(words::add);
        if (name.isEmpty()) {
            TELLING.stream().flatMap(field -> telling(group, field)).limit(2).forEach(words::add);
        }
        group.rows().stream()
                .filter(Row::isList)
                .filter(Row::isGiven)
                .filter(list -> name.isEmpty())
                .findFirst()
                .ifPresent(list -> words.add(list(list)));
        words.removeIf(String::isEmpty);
        return words.isEmpty() ? few(group) : String.join(", ", words);
    }

    private static Optional<String> preset(Row group) {
        return Optional.of(group.given().path(Whole.PRESET).asText("")).filter(text -> !text.isEmpty());
    }

    private static Stream<String> telling(Row group, String field) {
        var value = group.given().path(field);
        return value.isValueNode() ? Stream.of(JsonValue.words(value)) : Stream.empty();
    }

    /** The first values of a group that has nothing that tells more, or else what it is about. */
    private static String few(Row group) {
        var fields = group.given().properties().stream()
                .filter(field -> !field.getKey().equals("note"))
                .limit(3)
                .map(field -> Label.of(field.getKey())
                        + (field.getValue().isValueNode() ? " " + JsonValue.words(field.getValue()) : ""))
                .toList();
        return String.join(", ", fields);
    }
}
