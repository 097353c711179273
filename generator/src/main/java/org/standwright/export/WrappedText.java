package org.standwright.export;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Long sentences as lines of plain text. */
final class WrappedText {
    private static final int WIDTH = 100;

    /** A blank, but not the one in '4 1/8'. */
    private static final Pattern BREAK = Pattern.compile(" (?!(?<=\\d )\\d+/\\d)");

    private WrappedText() {}

    /** Breaks at blanks, never inside a fraction; the second line and all after it hang by {@code indent} more. */
    static List<String> lines(String first, String indent, String text) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder(first);
        boolean fresh = true;
        for (var word : BREAK.split(text)) {
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        lines.add(line.toString());
        return lines;
    }
}
