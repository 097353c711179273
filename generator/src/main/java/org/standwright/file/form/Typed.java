package org.standwright.file.form;

import java.util.regex.Pattern;
import org.standwright.file.text.DesignFileException;

/** What a person typed, as JSON: a plain number stays a number where one may stand, all else is text. */
final class Typed {
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?");

    private Typed() {}

    static String json(Input input, String typed) {
        var text = typed.strip();
        return switch (input) {
            case LENGTH, MASS, FORCE, WHOLE, NUMBER -> NUMBER.matcher(text).matches() ? text : JsonValue.quoted(text);
            case RAW -> isJson(text) ? text : JsonValue.quoted(text);
            default -> JsonValue.quoted(text);
        };
    }

    private static boolean isJson(String text) {
        try {
            return JsonValue.of("[" + text + "]").size() == 1;
        } catch (DesignFileException e) {
            return false; // then it is meant as text
        }
    }
}
