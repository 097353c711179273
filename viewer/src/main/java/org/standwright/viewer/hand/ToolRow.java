package org.standwright.viewer.hand;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.standwright.viewer.button.IconButton;

/** The tools as buttons, a line for each group; more of them where there is less room. */
final class ToolRow<A> extends VBox {
    ToolRow(List<Tool<A>> tools, Consumer<Tool<A>> used) {
        getStyleClass().add("tools");
        var groups = new LinkedHashMap<String, FlowPane>();
        for (var tool : tools) {
            var button = IconButton.labelled(tool.sign(), tool.label(), tool.tip(), () -> used.accept(tool));
            button.getStyleClass().addAll("tool", "flat");
            groups.computeIfAbsent(tool.group(), ToolRow::group).getChildren().add(button);
        }
        getChildren().setAll(groups.values());
    }

    private static FlowPane group(String name) {
        var title = new Label(name);
        title.getStyleClass().add("group-name");
        var group = new FlowPane(title);
        group.getStyleClass().add("group");
        return group;
    }
}
