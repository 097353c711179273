package org.standwright.viewer.paper;

import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;

/** Mouse, touch pad and keys that move a drawing. */
final class Hand {
    /** Zoom for each pixel that a wheel asks for. */
    private static final double PER_PIXEL = 1.004;

    /** How far an arrow moves the paper, pixels. */
    private static final double ARROW = 60;

    private final DrawingView view;
    private double lastX;
    private double lastY;

    Hand(DrawingView view) {
        this.view = view;
        view.addEventHandler(ScrollEvent.SCROLL, this::scroll);
        view.addEventHandler(ZoomEvent.ZOOM, event -> {
            view.zoom(event.getZoomFactor(), event.getX(), event.getY());
            event.consume();
        });
        view.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        view.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        view.addEventHandler(MouseEvent.MOUSE_CLICKED, this::click);
        view.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    private void scroll(ScrollEvent event) {
        if (event.getDeltaY() != 0) {
            view.zoom(Math.pow(PER_PIXEL, event.getDeltaY()), event.getX(), event.getY());
        }
        event.consume();
    }

    private void press(MouseEvent event) {
        view.requestFocus();
        lastX = event.getX();
        lastY = event.getY();
    }

    private void drag(MouseEvent event) {
        view.push(event.getX() - lastX, event.getY() - lastY);
        lastX = event.getX();
        lastY = event.getY();
    }

    private void click(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY || !event.isStillSincePress()) {
            return;
        }
        if (event.getClickCount() == 2) {
            view.fit();
        } else if (event.getClickCount() == 1) {
            view.click(event.getX(), event.getY());
        }
    }

    private void key(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case PLUS, EQUALS, ADD -> view.zoomIn();
            case MINUS, SUBTRACT -> view.zoomOut();
            case DIGIT0, NUMPAD0 -> view.fit();
            case LEFT -> view.push(ARROW, 0);
            case RIGHT -> view.push(-ARROW, 0);
            case UP -> view.push(0, ARROW);
            case DOWN -> view.push(0, -ARROW);
            default -> {
                return;
            }
        }
        event.consume();
    }
}
