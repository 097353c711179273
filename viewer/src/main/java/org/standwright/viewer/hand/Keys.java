package org.standwright.viewer.hand;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** What the keyboard does on a face: arrows pick, with Ctrl they move what is picked, with Ctrl and Shift its edge. */
final class Keys<A> {
    private final HandPane<A> pane;
    private final Grasp grasp;
    private final List<Tool<A>> tools;
    private final Consumer<Tool<A>> used;

    Keys(HandPane<A> pane, Face face, Grasp grasp, List<Tool<A>> tools, Consumer<Tool<A>> used) {
        this.pane = pane;
        this.grasp = grasp;
        this.tools = tools;
        this.used = used;
        face.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        face.addEventHandler(KeyEvent.KEY_RELEASED, this::released);
        face.focusedProperty().subscribe(focused -> {
            if (!focused) {
                grasp.keep();
            }
        });
    }

    private void pressed(KeyEvent event) {
        var tool = tools.stream().filter(one -> one.keys().match(event)).findFirst();
        if (tool.isPresent()) {
            used.accept(tool.get());
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            if (pane.escape()) {
                event.consume();
            }
        } else if (event.getCode() == KeyCode.SPACE) {
            pane.pickAround();
            event.consume();
        } else if (event.getCode().isArrowKey() && !event.isAltDown()) {
            arrow(event);
            event.consume();
        }
    }

    private void arrow(KeyEvent event) {
        int right = step(event.getCode(), KeyCode.LEFT, KeyCode.RIGHT);
        int up = step(event.getCode(), KeyCode.DOWN, KeyCode.UP);
        if (event.isShortcutDown()) {
            pane.nudge(right, up, event.isShiftDown());
        } else {
            pane.pickBeside(right, up);
        }
    }

    private static int step(KeyCode code, KeyCode back, KeyCode forth) {
        return code == forth || code.name().equals("KP_" + forth)
                ? 1
                : code == back || code.name().equals("KP_" + back) ? -1 : 0;
    }

    /** What was moved step by step is one edit, until the key that moves is let go. */
    private void released(KeyEvent event) {
        if (!event.isShortcutDown()) {
            grasp.keepSteps();
        }
    }
}
