package org.standwright.viewer.app;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.Arrays;
import java.util.Optional;

/** Light or dark. */
enum Look {
    LIGHT("light", new PrimerLight().getUserAgentStylesheet()),
    DARK("dark", new PrimerDark().getUserAgentStylesheet());

    private final String word;
    private final String styleSheet;

    Look(String word, String styleSheet) {
        this.word = word;
        this.styleSheet = styleSheet;
    }

    static Optional<Look> named(String word) {
        return Arrays.stream(values()).filter(look -> look.word.equals(word)).findFirst();
    }

    /** Also its style class at the window's root. */
    String word() {
        return word;
    }

    String styleSheet() {
        return styleSheet;
    }

    Look other() {
        return this == LIGHT ? DARK : LIGHT;
    }
}
