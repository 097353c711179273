package org.standwright.viewer.hand;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.scene.Cursor;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Move;

/** Takes hold of handles, with the mouse or step by step, and shows on the desk where they go, once a pulse at most. */
final class Grasp {
    /** The pointer moves this far before something is dragged, pixels. */
    private static final double STILL = 3;

    private final Face face;
    private final Trial trial;
    private final Consumer<Optional<String>> clicked;
    private Optional<Handle> held = Optional.empty();
    private Optional<Move> last = Optional.empty();
    private boolean isDragged;
    private int right;
    private int up;
    private double fromX;
    private double fromY;
    private double toX;
    private double toY;
    private double seenX;
    private double seenY;
    private final AnimationTimer pulse = new AnimationTimer() {
        @Override
        public void handle(long now) {
            follow();
        }
    };

    /** @param clicked gets the key of the thing that is clicked on */
    Grasp(Face face, Trial trial, Consumer<Optional<String>> clicked) {
        this.face = face;
        this.trial = trial;
        this.clicked = clicked;
        face.addEventHandler(MouseEvent.MOUSE_MOVED, this::hover);
        face.addEventHandler(MouseEvent.MOUSE_EXITED, left -> face.hover(Optional.empty()));
        face.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        face.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        face.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
        trial.refusalProperty().subscribe(why -> last.ifPresent(this::tell));
    }

    boolean holdsSomething() {
        return held.isPresent() && (isDragged || right != 0 || up != 0);
    }

    private void hover(MouseEvent event) {
        var handle = face.handleAt(event.getX(), event.getY());
        face.hover(handle);
        face.explain(event.getX(), event.getY());
        face.setCursor(handle.map(Handle::way).map(Grasp::cursor).orElse(Cursor.DEFAULT));
    }

    private static Cursor cursor(Handle.Way way) {
        return switch (way) {
            case UP_AND_DOWN -> Cursor.V_RESIZE;
            case LEFT_AND_RIGHT -> Cursor.H_RESIZE;
            case ANYWHERE -> Cursor.MOVE;
        };
    }

    private void press(MouseEvent event) {
        keep();
        face.requestFocus();
        trial.forget();
        fromX = event.getX();
        fromY = event.getY();
        if (event.getButton() == MouseButton.PRIMARY && !trial.isOn()) {
            held = face.handleAt(fromX, fromY);
        }
    }

    private void drag(MouseEvent event) {
        toX = event.getX();
        toY = event.getY();
        if (held.isPresent() && !isDragged && Math.hypot(toX - fromX, toY - fromY) >= STILL) {
            isDragged = true;
            seenX = fromX;
            seenY = fromY;
            pulse.start();
        }
    }

    private void release(MouseEvent event) {
        if (isDragged) {
            toX = event.getX();
            toY = event.getY();
            follow();
            keep();
        } else if (event.isStillSincePress() && event.getButton() == MouseButton.PRIMARY) {
            held = Optional.empty();
            clicked.accept(face.thingAt(event.getX(), event.getY()).map(thing -> thing.key()));
        }
    }

    /** Once a pulse, where the pointer has moved. */
    private void follow() {
        if (isOver()) {
            letGo();
        } else if (toX != seenX || toY != seenY) {
            seenX = toX;
            seenY = toY;
            carry();
        }
    }

    /** Whether somebody else has changed the text meanwhile. */
    private boolean isOver() {
        return last.isPresent() && !trial.isOn();
    }

    private void carry() {
        double factor = face.scale().factor();
        held.filter(handle -> isDragged)
                .ifPresent(handle -> go(handle.dragged((toX - fromX) / factor, (fromY - toY) / factor)));
    }

    private void go(Move move) {
        last = Optional.of(move);
        face.carry(last);
        trial.show(move.text());
        tell(move);
    }

    private void tell(Move move) {
        boolean isRefused = !trial.refusalProperty().get().isEmpty();
        if (isDragged) {
            face.tellSizes(move, isRefused, toX, toY);
        } else {
            face.tellSizes(move, isRefused);
        }
    }

    /** Moves a handle by one more step; {@link #keep} ends it. */
    void nudge(Handle handle, int byRight, int byUp) {
        if (isOver()) {
            letGo();
        }
        if (held.isEmpty()) {
            held = Optional.of(handle);
            trial.forget();
        }
        if (!isDragged && held.get().key().equals(handle.key())) {
            right += byRight;
            up += byUp;
            go(held.get().nudged(right, up));
        }
    }

    /** Makes what was moved an edit. */
    void keep() {
        if (holdsSomething()) {
            trial.keep(held.get().deed(), () -> {});
        }
        letGo();
    }

    /** The same for what was moved step by step. */
    void keepSteps() {
        if (!isDragged && (right != 0 || up != 0)) {
            keep();
        }
    }

    void cancel() {
        trial.cancel();
        letGo();
    }

    private void letGo() {
        pulse.stop();
        held = Optional.empty();
        last = Optional.empty();
        isDragged = false;
        right = 0;
        up = 0;
        face.carry(Optional.empty());
    }
}
