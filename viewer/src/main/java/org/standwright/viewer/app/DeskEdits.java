package org.standwright.viewer.app;

import java.util.function.UnaryOperator;
import org.standwright.file.edit.JsonEdit;
import org.standwright.file.edit.JsonEditException;
import org.standwright.viewer.document.Document;
import org.standwright.viewer.form.Edits;
import org.standwright.viewer.work.Desk;

/** What the form does, as edits of the text on the desk. */
record DeskEdits(Desk desk) implements Edits {
    @Override
    public void set(String pointer, String json, String what) {
        edit(what, text -> JsonEdit.set(text, pointer, json));
    }

    @Override
    public void remove(String pointer, String what) {
        editList(what, text -> JsonEdit.remove(text, pointer));
    }

    @Override
    public void insert(String list, int index, String json, String what) {
        editList(what, text -> JsonEdit.insert(text, list, index, json));
    }

    @Override
    public void move(String list, int from, int to, String what) {
        editList(what, text -> JsonEdit.move(text, list, from, to));
    }

    /** Numbers of entries are those of the text that the form shows: where it is behind, it would hit a neighbour. */
    private void editList(String what, UnaryOperator<String> change) {
        if (desk.settledProperty().get().document() == present()) {
            edit(what, change);
        }
    }

    private void edit(String what, UnaryOperator<String> change) {
        try {
            desk.edit(what, change.apply(present().text()));
        } catch (JsonEditException gone) {
            // the row was that of an older text, in which there still was such a place
        }
    }

    /** What has been done; not what is only tried, such as while something is dragged. */
    private Document present() {
        return desk.historyProperty().get().present();
    }
}
