package org.standwright.export;

import java.util.HashSet;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Names as a format can hold them, each given once. */
public final class SafeNames {
    private static final char UNKNOWN = '\ufffd';

    private final UnaryOperator<String> held;
    private final Set<String> given = new HashSet<>();

    private SafeNames(UnaryOperator<String> held) {
        this.held = held;
    }

    /** For formats that know only letters, digits, dots, hyphens and underscores. */
    public static SafeNames ofPlainLetters() {
        return new SafeNames(SafeNames::plain);
    }

    /** For formats that know every letter there is. */
    public static SafeNames ofAnyLetters() {
        return new SafeNames(SafeNames::printable);
    }

    /** {@code name} as the format can hold it, with a number behind it if that is taken. */
    public String of(String name) {
        var safe = held.apply(name);
        var free = safe;
        for (int number = 2; !given.add(free); number++) {
            free = safe + "_" + number;
        }
        return free;
    }

    /** Other runs of characters than letters, digits, dots and hyphens become one underscore. */
    public static String plain(String name) {
        return name.replaceAll("[^A-Za-z0-9.-]+", "_");
    }

    /** White space becomes a blank, and what XML 1.0 or Unicode has no character for becomes a question mark in a box. */
    public static String printable(String name) {
        var text = new StringBuilder();
        name.codePoints().map(SafeNames::printable).forEach(text::appendCodePoint);
        return text.toString();
    }

    private static int printable(int character) {
        if (Character.isWhitespace(character)) {
            return ' ';
        }
        boolean isHalf = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        boolean isNone = (character & 0xfffe) == 0xfffe;
        return Character.isISOControl(character) || isHalf || isNone ? UNKNOWN : character;
    }
}
