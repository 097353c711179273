package org.standwright.viewer.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;
import org.standwright.file.form.Row;

/**
 * The rows inside one group: those given and those that must be, then the others folded under one button. A row that is
 * filled in there stays where it is until the group is folded; one that is left out stays where it was.
 */
final class RowsBox extends VBox {
    private final Scope scope;
    private final String path;
    private final String others;
    private final Map<String, RowView> views = new HashMap<>();
    private final VBox main = new VBox();
    private final VBox rest = new VBox();
    private final Button more = new Button();
    private final FontIcon chevron = new FontIcon(Feather.CHEVRON_RIGHT);
    private List<Row> rows = List.of();

    /**
     * @param path of the group
     * @param others what the folded rows are called: 'more settings'
     */
    RowsBox(Scope scope, String path, String others) {
        this.scope = scope;
        this.path = path;
        this.others = others;
        getStyleClass().add("form-rows");
        main.getStyleClass().add("form-rows");
        rest.getStyleClass().addAll("form-rows", "form-rest");
        more.setGraphic(chevron);
        more.getStyleClass().addAll("flat", "form-more");
        more.setOnAction(event -> setMore(!isMore()));
        getChildren().addAll(main, more, rest);
    }

    void update(List<Row> now) {
        rows = now;
        var first = new ArrayList<RowView>();
        var last = new ArrayList<RowView>();
        for (var row : now) {
            if (isFirst(row)) {
                first.add(view(row));
            } else if (isMore()) {
                last.add(view(row));
            }
        }
        views.values().removeIf(view -> !first.contains(view) && !last.contains(view));
        Nodes.arrange(main.getChildren(), first);
        Nodes.arrange(rest.getChildren(), last);
        showMore(now);
    }

    private void showMore(List<Row> now) {
        var left = now.stream().filter(row -> !isFirst(row)).toList();
        boolean some = !left.isEmpty();
        long problems = left.stream()
                .filter(row -> !scope.model().problems(row).isEmpty())
                .count();
        var what = left.size() == 1 ? others.substring(0, others.length() - 1) : others;
        more.setText(left.size() + " " + what + (problems > 0 && !isMore() ? " \u2013 problems inside" : ""));
        chevron.setIconCode(isMore() ? Feather.CHEVRON_DOWN : Feather.CHEVRON_RIGHT);
        more.setAccessibleText(more.getText() + (isMore() ? ", open" : ", folded"));
        more.setVisible(some);
        more.setManaged(some);
        rest.setVisible(some && isMore());
        rest.setManaged(some && isMore());
    }

    private boolean isFirst(Row row) {
        var view = views.get(row.name());
        if (view != null && view.getParent() == rest && isMore()) {
            return false;
        }
        if (Editor.kind(row) == Editor.Kind.FIXED) {
            return false;
        }
        boolean stays = view != null && view.getParent() == main;
        return stays || row.isGiven() || row.isRequired() || row.isChooser() || isName(row);
    }

    /** A preset's own name leads the fields that it stands for. */
    private static boolean isName(Row row) {
        return row.name().equals("preset")
                || row.parent()
                        .filter(group -> group.pointer().equals(row.pointer()))
                        .isPresent();
    }

    private RowView view(Row row) {
        var known = views.get(row.name());
        if (known != null && known.suits(row)) {
            known.update(row);
            return known;
        }
        var view = RowView.of(row, scope);
        views.put(row.name(), view);
        return view;
    }

    private boolean isMore() {
        return scope.folds().isOpen(Folds.more(path));
    }

    private void setMore(boolean open) {
        if (!open) {
            rest.getChildren().clear();
            views.values().removeIf(view -> view.getParent() != main);
        }
        scope.folds().set(Folds.more(path), open);
        update(rows);
    }

    /** Opens the way to a row inside. */
    Optional<RowView> reveal(String to) {
        var next = rows.stream()
                .filter(row -> (to + "/").startsWith(row.path() + "/"))
                .findFirst();
        if (next.isPresent() && !isFirst(next.get()) && !isMore()) {
            setMore(true);
        }
        return next.map(row -> views.get(row.name()).reveal(to));
    }
}
