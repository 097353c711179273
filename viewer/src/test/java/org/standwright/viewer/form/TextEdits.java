package org.standwright.viewer.form;

import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.standwright.file.edit.JsonEdit;

/** Edits that splice a text: all that is not meant stays byte for byte. */
public final class TextEdits implements Edits {
    private final Supplier<String> text;
    private final BiConsumer<String, String> edited;

    /**
     * @param text as it stands
     * @param edited gets each step's name and the text after it
     */
    public TextEdits(Supplier<String> text, BiConsumer<String, String> edited) {
        this.text = text;
        this.edited = edited;
    }

    @Override
    public void set(String pointer, String json, String what) {
        edited.accept(what, JsonEdit.set(text.get(), pointer, json));
    }

    @Override
    public void remove(String pointer, String what) {
        edited.accept(what, JsonEdit.remove(text.get(), pointer));
    }

    @Override
    public void insert(String list, int index, String json, String what) {
        edited.accept(what, JsonEdit.insert(text.get(), list, index, json));
    }

    @Override
    public void move(String list, int from, int to, String what) {
        edited.accept(what, JsonEdit.move(text.get(), list, from, to));
    }
}
