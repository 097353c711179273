package org.standwright.viewer.app;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToolBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.standwright.viewer.work.Desk;

/** Everything in the window: what is edited on the left, what is seen in the middle, what to watch out for below it. */
final class Shell extends BorderPane {
    private final TabPane editors = new TabPane();
    private final Views views = new Views();
    private final SplitPane seen = new SplitPane();
    private final SplitPane whole = new SplitPane();

    Shell(Desk desk, Node findings) {
        getStyleClass().add("shell");
        getStylesheets().add(Shell.class.getResource("viewer.css").toExternalForm());
        editors.getStyleClass().add("editors");
        editors.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        seen.setOrientation(Orientation.VERTICAL);
        seen.getItems().setAll(views, findings);
        seen.setDividerPositions(0.7);
        whole.getItems().setAll(editors, seen);
        whole.setDividerPositions(0.3);
        SplitPane.setResizableWithParent(editors, false);
        setCenter(whole);
        setBottom(new VBox(new ProblemBanner(desk), new StatusLine(desk)));
    }

    void addEditor(String name, Once<? extends Node> editor) {
        var tab = new Tab(name);
        tab.selectedProperty().subscribe(selected -> tab.setContent(selected ? editor.get() : null));
        editors.getTabs().add(tab);
    }

    Views views() {
        return views;
    }

    void turnEditor() {
        var selection = editors.getSelectionModel();
        selection.select((selection.getSelectedIndex() + 1) % editors.getTabs().size());
    }

    void setActions(List<Action> actions, Menu recent) {
        var tools = new ToolBar();
        tools.getItems().setAll(Menus.buttons(actions));
        setTop(new VBox(Menus.bar(actions, recent), tools));
    }
}
