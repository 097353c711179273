package org.standwright.viewer.form;

import java.util.List;
import javafx.collections.ObservableList;
import javafx.scene.Node;

/** Makes a pane's children those wanted, and leaves alone the ones that are where they should be: they keep the focus. */
final class Nodes {
    private Nodes() {}

    static void arrange(ObservableList<Node> children, List<? extends Node> wanted) {
        if (children.equals(wanted)) {
            return;
        }
        children.removeIf(child -> !wanted.contains(child));
        for (int i = 0; i < wanted.size(); i++) {
            var node = wanted.get(i);
            if (i < children.size() && children.get(i) == node) {
                continue;
            }
            children.remove(node);
            children.add(i, node);
        }
    }
}
