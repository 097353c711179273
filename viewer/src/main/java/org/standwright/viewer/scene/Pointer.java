package org.standwright.viewer.scene;

import java.util.Optional;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/** What the mouse does: drag turns, middle, right or shift drag moves, wheel zooms, click picks, double click opens or fits. */
final class Pointer {
    private static final double DEGREES_PER_PIXEL = 0.4;
    private static final double ZOOM_PER_PIXEL = 1.0025;

    private final AssemblyView view;
    private final SceneModel model;
    private double x;
    private double y;

    Pointer(AssemblyView view, SceneModel model) {
        this.view = view;
        this.model = model;
        view.setOnMousePressed(this::press);
        view.setOnMouseDragged(this::drag);
        view.setOnMouseReleased(event -> view.rest());
        view.setOnMouseClicked(this::click);
        view.setOnScroll(this::zoom);
    }

    private void press(MouseEvent event) {
        view.requestFocus();
        remember(event);
    }

    private void remember(MouseEvent event) {
        x = event.getX();
        y = event.getY();
    }

    private void drag(MouseEvent event) {
        view.move();
        if (event.getButton() == MouseButton.PRIMARY && !event.isShiftDown()) {
            model.viewpoint().turn(DEGREES_PER_PIXEL * (event.getX() - x), DEGREES_PER_PIXEL * (event.getY() - y));
        } else {
            model.viewpoint().pan(event.getX() - x, event.getY() - y);
        }
        remember(event);
    }

    private void click(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY && event.isStillSincePress()) {
            var hit = event.isShortcutDown()
                    ? Optional.<Hit>empty()
                    : view.hit(event.getPickResult(), event.getX(), event.getY());
            if (view.isTaken(hit)) {
                return;
            }
            var label = hit.map(Hit::label);
            if (event.getClickCount() == 2) {
                label.filter(model::slides).ifPresentOrElse(model::slide, model::fit);
            } else {
                model.pickedProperty().set(label);
            }
        }
    }

    private void zoom(ScrollEvent event) {
        var fixed = view.hit(event.getPickResult(), event.getX(), event.getY())
                .map(Hit::point)
                .orElseGet(() -> model.viewpoint().sight().getValue().atTarget(event.getX(), event.getY()));
        model.viewpoint().zoom(Math.pow(ZOOM_PER_PIXEL, event.getDeltaY()), fixed);
    }
}
