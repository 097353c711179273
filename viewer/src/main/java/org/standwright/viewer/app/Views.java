package org.standwright.viewer.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.Tooltip;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** The panes in the middle, one at a time; each is built when it is first looked at, and only that one is in the window. */
final class Views extends TabPane {
    private final List<String> names = new ArrayList<>();

    Views() {
        getStyleClass().add("views");
        setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    }

    void add(String name, Feather icon, Supplier<? extends Node> pane) {
        var tab = new Tab(name);
        tab.setGraphic(new FontIcon(icon));
        tab.setTooltip(new Tooltip(name + " (Alt+" + (getTabs().size() + 1) + ")"));
        var built = new Once<Node>(pane);
        tab.selectedProperty().subscribe(selected -> tab.setContent(selected ? built.get() : null));
        names.add(name);
        getTabs().add(tab);
    }

    List<String> names() {
        return List.copyOf(names);
    }

    void show(String name) {
        getSelectionModel().select(names.indexOf(name));
    }

    /** The pane that is looked at. */
    Node shown() {
        return getSelectionModel().getSelectedItem().getContent();
    }
}
