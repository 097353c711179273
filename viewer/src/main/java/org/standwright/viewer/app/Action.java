package org.standwright.viewer.app;

import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.input.KeyCombination;
import org.kordamp.ikonli.feather.Feather;

/**
 * Something that the maker can do from everywhere in the window. Menus, tool bar and the sheet of keys are made from
 * these.
 *
 * @param menu that it stands in
 * @param icon of its button; only what is needed often has one
 * @param off while it cannot be done
 */
record Action(
        String menu,
        String name,
        Optional<KeyCombination> keys,
        Optional<Feather> icon,
        ObservableValue<Boolean> off,
        Runnable work) {

    static Action of(String menu, String name, Runnable work) {
        return new Action(menu, name, Optional.empty(), Optional.empty(), new SimpleBooleanProperty(false), work);
    }

    /** @param combination as JavaFX writes it: 'Shortcut+S' */
    Action keys(String combination) {
        return new Action(menu, name, Optional.of(KeyCombination.keyCombination(combination)), icon, off, work);
    }

    Action icon(Feather symbol) {
        return new Action(menu, name, keys, Optional.of(symbol), off, work);
    }

    Action offWhile(ObservableValue<Boolean> condition) {
        return new Action(menu, name, keys, icon, condition, work);
    }

    /** The name, with its keys where it has some. */
    String tip() {
        return keys.map(pressed -> name + " (" + pressed.getDisplayText() + ")").orElse(name);
    }
}
