package org.standwright.viewer.form;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.file.form.Row;

/** A group of fields. */
final class GroupView extends FoldView {
    private final Button remove;
    private Optional<RowsBox> box = Optional.empty();

    GroupView(Row row, Scope scope) {
        super(row, scope);
        remove = Icons.button(Feather.TRASH_2, "Remove", () -> scope.model().clear(row()));
        Icons.showNear(remove, header(), head());
        if (!row.isEntry()) {
            addTrailing(remove);
        }
        start();
    }

    @Override
    void refresh() {
        super.refresh();
        remove.setVisible(row().isGiven() && !row().isRequired());
        remove.setManaged(remove.isVisible());
        Icons.name(remove, "Remove " + row().label());
    }

    @Override
    Region body() {
        return rows();
    }

    @Override
    void refreshBody() {
        rows().update(row().rows());
    }

    @Override
    RowView revealInside(String path) {
        return rows().reveal(path).orElse(this);
    }

    private RowsBox rows() {
        if (box.isEmpty()) {
            box = Optional.of(new RowsBox(scope(), row().path(), "more settings"));
        }
        return box.get();
    }
}
