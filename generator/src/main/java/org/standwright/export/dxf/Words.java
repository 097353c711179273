package org.standwright.export.dxf;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Words as a DXF file holds them: ASCII, other characters of the first plane as {@code \\U+XXXX}, no control codes. */
final class Words {
    /** The longest text of R2000, as written. */
    private static final int LONGEST = 250;

    private static final String FORBIDDEN = "<>/\\\":;?*|=,`'";

    private Words() {}

    /** Lettering: '%%' and '^' begin codes and are kept apart or doubled, a backslash is escaped. */
    static String text(String words) {
        var text = new StringBuilder();
        for (int i = 0; i < words.length(); i += Character.charCount(words.codePointAt(i))) {
            var next = character(words.codePointAt(i));
            if (next.equals("%") && text.length() > 0 && text.charAt(text.length() - 1) == '%') {
                next = " %";
            }
            if (text.length() + next.length() > LONGEST) {
                break;
            }
            text.append(next);
        }
        return text.toString();
    }

    private static String character(int c) {
        if (Character.isISOControl(c) || Character.isWhitespace(c)) {
            return " ";
        }
        if (c == '^') {
            return "^ ";
        }
        if (c > 0xffff || c >= 0xd800 && c <= 0xdfff || c >= 0xfffe) {
            return "?";
        }
        return c > 126 || c == '\\' ? String.format(Locale.ROOT, "\\U+%04X", c) : Character.toString(c);
    }

    /** Names of layers: no character that the format keeps for itself, none given twice in small or large letters. */
    static final class Names {
        private final Set<String> given = new HashSet<>(Set.of("0"));

        String of(String name) {
            var plain = new StringBuilder();
            name.codePoints().forEach(c -> plain.append(isPlain(c) ? Character.toString(c) : "_"));
            var cut = plain.toString().strip();
            cut = cut.substring(0, Math.min(cut.length(), LONGEST - 10)).strip();
            var base = cut.isEmpty() ? "layer" : cut;
            var free = base;
            for (int number = 2; !given.add(free.toLowerCase(Locale.ROOT)); number++) {
                free = base + " " + number;
            }
            return free;
        }

        private static boolean isPlain(int c) {
            return c >= ' ' && c <= '~' && FORBIDDEN.indexOf(c) < 0;
        }
    }
}
