package org.standwright.viewer.hand;

import javafx.scene.input.KeyCombination;
import org.kordamp.ikonli.feather.Feather;

/**
 * A button, a menu entry and a key for one action.
 *
 * @param group that its button stands in
 * @param label on its button
 * @param words in the menu, and beside the button's key
 */
record Tool<A>(A action, String group, Feather sign, String label, String words, KeyCombination keys) {
    /** 'Split in two (S)'. */
    String tip() {
        return words + " (" + keys.getDisplayText() + ")";
    }
}
