package org.standwright.file.form;

import java.util.Locale;

/** The schema's words as a person reads them. */
final class Label {
    private Label() {}

    /** {@code workingHeight} as 'Working height', {@code equal-drawers} as 'Equal drawers'. */
    static String of(String name) {
        if (name.isEmpty() || !Character.isLetter(name.charAt(0)) || name.contains("/")) {
            return name;
        }
        var words = name.replaceAll("([a-z])([A-Z])", "$1 $2").replace('-', ' ').toLowerCase(Locale.ROOT);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A value that can be chosen: as a name, but a unit stays as it is. */
    static String ofChoice(String word) {
        return word.equals("mm") || word.equals("in") ? word : of(word);
    }

    /** The entry of a list: {@code bays} holds 'bay', {@code positions} 'position'. */
    static String one(String list) {
        var words = of(list).toLowerCase(Locale.ROOT);
        if (words.endsWith("shelves")) {
            return words.substring(0, words.length() - 3) + "f";
        }
        if (words.endsWith("ies")) {
            return words.substring(0, words.length() - 3) + "y";
        }
        return words.endsWith("s") && !words.endsWith("ss") ? words.substring(0, words.length() - 1) : words;
    }
}
