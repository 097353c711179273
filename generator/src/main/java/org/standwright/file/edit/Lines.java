package org.standwright.file.edit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lines of a text, and the breaking of long ones. */
final class Lines {
    /** Characters on a line; beyond it lists and objects get a line for each entry. */
    static final int LONGEST = 118;

    private Lines() {}

    static boolean isOne(String text) {
        return text.indexOf('\n') < 0 && text.indexOf('\r') < 0;
    }

    /** What ends the first line of a text. */
    static String end(String text) {
        int at = text.indexOf('\n');
        if (at < 0) {
            return text.indexOf('\r') < 0 ? "\n" : "\r";
        }
        return at > 0 && text.charAt(at - 1) == '\r' ? "\r\n" : "\n";
    }

    /** What stands on the line before {@code offset}. */
    static String before(String text, int offset) {
        int start = offset;
        while (start > 0 && !isEnd(text.charAt(start - 1))) {
            start--;
        }
        return text.substring(start, offset);
    }

    /** The white space that the line around {@code offset} begins with. */
    static String indent(String text, int offset) {
        var before = before(text, offset);
        return before.substring(0, before.length() - before.stripLeading().length());
    }

    /** Length of the line around {@code offset}. */
    static int length(String text, int offset) {
        int end = offset;
        while (end < text.length() && !isEnd(text.charAt(end))) {
            end++;
        }
        return before(text, offset).length() + end - offset;
    }

    /** From a gap that begins a line: the end of the line before and the indentation, without empty lines between. */
    static String lastBreak(String gap) {
        int at = Math.max(gap.lastIndexOf('\n'), gap.lastIndexOf('\r'));
        boolean both = at > 0 && gap.charAt(at) == '\n' && gap.charAt(at - 1) == '\r';
        return gap.substring(both ? at - 1 : at);
    }

    /**
     * Gives a line to each entry of the objects and lists on one line that lead to a place, the outer first, until its
     * line is no longer too long. A text that is one line stays so.
     */
    static String broken(String text, List<String> steps) {
        var root = WrittenReader.read(text);
        if (root.isOnOneLine(text)) {
            return text;
        }
        var style = Style.of(text, root);
        var broken = text;
        for (var next = tooLong(text, steps); next.isPresent(); next = tooLong(broken, steps)) {
            broken = oneEach(broken, next.get(), style);
        }
        return broken;
    }

    private static Optional<Written> tooLong(String text, List<String> steps) {
        return WrittenReader.read(text).way(steps).stream()
                .filter(value -> !value.members().isEmpty() && value.isOnOneLine(text))
                .findFirst()
                .filter(value -> length(text, value.start()) > LONGEST);
    }

    private static String oneEach(String text, Written value, Style style) {
        var outer = style.newLine() + indent(text, value.start());
        var inner = outer + style.indent();
        var entries =
                value.members().stream().map(member -> inner + member.in(text)).collect(Collectors.joining(","));
        return text.substring(0, value.start() + 1) + entries + outer + text.substring(value.end() - 1);
    }

    private static boolean isEnd(char character) {
        return character == '\n' || character == '\r';
    }
}
