package org.standwright.viewer.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;
import org.standwright.file.form.Choice;
import org.standwright.file.form.Row;

/** A list: its entries one below the other, and a button that adds one. */
final class EntriesView extends FoldView {
    private final Button remove;
    private final VBox body = new VBox();
    private final VBox entries = new VBox();
    private final ButtonBase add;
    private List<EntryView> views = new ArrayList<>();

    EntriesView(Row row, Scope scope) {
        super(row, scope);
        remove = Icons.button(Feather.TRASH_2, "Remove", () -> scope.model().clear(row()));
        Icons.showNear(remove, header(), head());
        addTrailing(remove);
        add = addButton(row);
        entries.getStyleClass().add("form-rows");
        body.getStyleClass().add("form-rows");
        body.getChildren().addAll(entries, add);
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
        return body;
    }

    @Override
    void refreshBody() {
        var rows = row().rows();
        var focused = Optional.ofNullable(getScene()).map(scene -> scene.getFocusOwner());
        var matched = Matching.of(views, rows);
        var now = new ArrayList<EntryView>();
        for (int i = 0; i < rows.size(); i++) {
            var view = matched.get(i);
            view.filter(known -> known.suits(rows.get(now.size())))
                    .ifPresentOrElse(
                            known -> {
                                known.update(rows.get(now.size()));
                                now.add(known);
                            },
                            () -> now.add(new EntryView(rows.get(now.size()), scope())));
        }
        views = now;
        Nodes.arrange(entries.getChildren(), now);
        add.setDisable(!FormModel.hasRoom(row()));
        // a node that was moved has lost the focus on the way
        focused.filter(node -> node.getScene() != null && !node.isFocused()).ifPresent(node -> node.requestFocus());
    }

    @Override
    RowView revealInside(String path) {
        return views.stream()
                .filter(view -> (path + "/").startsWith(view.row().path() + "/"))
                .findFirst()
                .map(view -> view.reveal(path))
                .orElse(this);
    }

    private ButtonBase addButton(Row row) {
        var words = "Add " + row.oneOf();
        var members = row.members();
        var button = members.isEmpty() ? new Button(words) : new MenuButton(words);
        button.setGraphic(new FontIcon(Feather.PLUS));
        button.getStyleClass().add("form-add");
        if (button instanceof MenuButton menu) {
            members.forEach(member -> {
                var item = new MenuItem(member.label());
                item.setOnAction(event -> added(Optional.of(member)));
                menu.getItems().add(item);
            });
        } else {
            button.setOnAction(event -> added(Optional.empty()));
        }
        return button;
    }

    private void added(Optional<Choice> member) {
        scope().folds().set(row().path() + "/" + row().rows().size(), true);
        scope().model().addEntry(row(), member);
    }
}
