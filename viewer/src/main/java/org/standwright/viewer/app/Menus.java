package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import org.kordamp.ikonli.javafx.FontIcon;
import org.standwright.viewer.button.IconButton;

/** Menus and buttons of actions. */
final class Menus {
    private Menus() {}

    /** A menu for each of the actions' menus, in their order; files that were open are in the first. */
    static MenuBar bar(List<Action> actions, Menu recent) {
        var menus = new LinkedHashMap<String, Menu>();
        for (var action : actions) {
            menus.computeIfAbsent(action.menu(), Menu::new).getItems().add(item(action));
        }
        menus.values().iterator().next().getItems().add(2, recent);
        var bar = new MenuBar();
        bar.getMenus().setAll(menus.values());
        return bar;
    }

    /** A menu of the files that were open, kept up. */
    static Menu recent(FileWork files) {
        var menu = new Menu("Open again");
        files.recentProperty().subscribe(recent -> {
            menu.getItems()
                    .setAll(recent.files().stream()
                            .map(Path::of)
                            .map(file -> again(files, file))
                            .toList());
            menu.setDisable(recent.files().isEmpty());
        });
        return menu;
    }

    private static MenuItem again(FileWork files, Path file) {
        var item = new MenuItem(file.toString());
        item.setMnemonicParsing(false);
        item.setOnAction(chosen -> files.open(file));
        return item;
    }

    private static MenuItem item(Action action) {
        var item = new MenuItem(action.name());
        action.keys().ifPresent(item::setAccelerator);
        action.icon().ifPresent(icon -> item.setGraphic(new FontIcon(icon)));
        item.disableProperty().bind(action.off());
        item.setOnAction(chosen -> action.work().run());
        return item;
    }

    /** A button for each action that has an icon. */
    static List<Node> buttons(List<Action> actions) {
        return actions.stream()
                .filter(action -> action.icon().isPresent())
                .<Node>map(Menus::button)
                .toList();
    }

    private static Button button(Action action) {
        var button = IconButton.of(action.icon().orElseThrow(), action.tip(), action.work());
        button.disableProperty().bind(action.off());
        return button;
    }
}
