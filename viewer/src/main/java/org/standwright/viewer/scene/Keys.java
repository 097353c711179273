package org.standwright.viewer.scene;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.BooleanProperty;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.standwright.geom.Vec3;

/** What the keyboard does while the view has the focus. */
final class Keys {
    private static final double TURN = 10;
    private static final double ZOOM = 1.2;
    private static final double SLIDE = 40;
    private static final List<KeyCode> DIGITS =
            List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6);

    private final SceneModel model;
    private final Map<KeyCode, Runnable> plain = new EnumMap<>(KeyCode.class);
    private final Map<KeyCode, Runnable> shifted = new EnumMap<>(KeyCode.class);

    Keys(SceneModel model) {
        this.model = model;
        for (var view : StandardView.values()) {
            plain.put(DIGITS.get(view.ordinal()), () -> model.seeFrom(view));
        }
        plain.put(KeyCode.F, model::fit);
        plain.put(KeyCode.P, model.viewpoint()::swapLens);
        plain.put(KeyCode.H, model::hidePicked);
        plain.put(KeyCode.I, model::isolatePicked);
        plain.put(KeyCode.A, model::showAll);
        plain.put(KeyCode.T, () -> swap(model.seeThroughProperty()));
        plain.put(KeyCode.E, () -> swap(model.edgesProperty()));
        plain.put(KeyCode.O, () -> model.pickedProperty().get().ifPresent(model::slide));
        shifted.put(KeyCode.O, () -> {
            if (model.isOpen()) {
                model.closeAll();
            } else {
                model.openAll();
            }
        });
        plain.put(KeyCode.PAGE_UP, () -> model.stepBy(1));
        plain.put(KeyCode.PAGE_DOWN, () -> model.stepBy(-1));
        move(KeyCode.LEFT, -1, 0);
        move(KeyCode.RIGHT, 1, 0);
        move(KeyCode.UP, 0, -1);
        move(KeyCode.DOWN, 0, 1);
        List.of(KeyCode.PLUS, KeyCode.EQUALS, KeyCode.ADD).forEach(key -> plain.put(key, () -> zoom(ZOOM)));
        shifted.put(KeyCode.EQUALS, () -> zoom(ZOOM)); // plus, on many keyboards
        List.of(KeyCode.MINUS, KeyCode.SUBTRACT).forEach(key -> plain.put(key, () -> zoom(1 / ZOOM)));
    }

    /** Does what the key stands for, if anything; keys with other modifiers belong to the window. */
    void press(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown() || event.isMetaDown()) {
            return;
        }
        var action = event.isShiftDown() ? shifted.get(event.getCode()) : plain.get(event.getCode());
        if (action != null) {
            action.run();
            event.consume();
        }
    }

    private void move(KeyCode key, int right, int down) {
        plain.put(key, () -> model.viewpoint().turn(TURN * right, TURN * down));
        shifted.put(key, () -> model.viewpoint().pan(SLIDE * right, SLIDE * down));
    }

    private void zoom(double factor) {
        Vec3 target = model.viewpoint().orbitProperty().get().target();
        model.viewpoint().zoom(factor, target);
    }

    private static void swap(BooleanProperty property) {
        property.set(!property.get());
    }
}
