package org.standwright.viewer.hand.change;

import java.util.Optional;

/**
 * One thing that may be done to what is picked.
 *
 * @param what a plain name for the history: 'Remove drawer 1.2'
 * @param text of the file after it; empty where it cannot be done
 * @param whyNot in words, where it cannot be done
 * @param then key of the thing to pick after it
 */
public record Deed(String what, Optional<String> text, String whyNot, Optional<String> then) {
    public static Deed of(String what, String text, String then) {
        return new Deed(what, Optional.of(text), "", Optional.of(then));
    }

    public static Deed impossible(String what, String whyNot) {
        return new Deed(what, Optional.empty(), whyNot, Optional.empty());
    }
}
