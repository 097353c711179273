package org.standwright.viewer.text;

import java.util.Collection;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.StyleSpansBuilder;

/** Style classes for the pieces of a JSON text, whether it is well-formed or not. */
final class JsonColours {
    private static final Pattern PIECE = Pattern.compile("(?<key>\"[^\"\\\\\\n]*+(?:\\\\.[^\"\\\\\\n]*+)*+\"(?=\\s*:))"
            + "|(?<string>\"[^\"\\\\\\n]*+(?:\\\\.[^\"\\\\\\n]*+)*+\"?)"
            + "|(?<number>-?\\d[\\d.eE+-]*)"
            + "|(?<word>\\b(?:true|false|null)\\b)");

    private JsonColours() {}

    static StyleSpans<Collection<String>> of(String text) {
        var spans = new StyleSpansBuilder<Collection<String>>();
        var piece = PIECE.matcher(text);
        int end = 0;
        while (piece.find()) {
            spans.add(List.of(), piece.start() - end);
            spans.add(List.of(styleClass(piece)), piece.end() - piece.start());
            end = piece.end();
        }
        spans.add(List.of(), text.length() - end);
        return spans.create();
    }

    private static String styleClass(Matcher piece) {
        if (piece.group("key") != null) {
            return "json-key";
        }
        if (piece.group("string") != null) {
            return "json-string";
        }
        return piece.group("number") != null ? "json-number" : "json-word";
    }
}
