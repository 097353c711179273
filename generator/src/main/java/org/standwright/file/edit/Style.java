package org.standwright.file.edit;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a text is laid out.
 *
 * @param newLine that ends its lines
 * @param indent of one level
 * @param pad inside the braces of an object on one line
 * @param colon between key and value
 * @param gap after a comma on one line
 */
record Style(String newLine, String indent, String pad, String colon, String gap) {

    static Style of(String text, Written root) {
        var colon = fields(root)
                .map(field -> colon(text, field))
                .filter(Lines::isOne)
                .findFirst()
                .orElse(": ");
        var gap = colon.endsWith(" ") ? " " : "";
        var pad = objects(root)
                .filter(object -> !object.members().isEmpty())
                .map(object -> text.substring(
                        object.start() + 1, object.members().get(0).start()))
                .filter(Lines::isOne)
                .findFirst()
                .orElse(gap);
        return new Style(Lines.end(text), indent(text, root).orElse("  "), pad, colon, gap);
    }

    /** What stands between a key and its value. */
    static String colon(String text, Written.Member field) {
        return text.substring(field.key().orElseThrow().end(), field.value().start());
    }

    /** How much further in the first entry stands that begins a line. */
    private static Optional<String> indent(String text, Written root) {
        return root.members().stream()
                .map(member -> Lines.before(text, member.start()))
                .filter(before -> before.isBlank() && !before.isEmpty())
                .findFirst();
    }

    private static Stream<Written.Member> fields(Written value) {
        return objects(value).flatMap(object -> object.members().stream());
    }

    private static Stream<Written> objects(Written value) {
        var own = value.shape() == Written.Shape.OBJECT ? Stream.of(value) : Stream.<Written>empty();
        return Stream.concat(own, value.members().stream().flatMap(member -> objects(member.value())));
    }
}
