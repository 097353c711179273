package org.standwright.viewer.hand;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Subject;
import org.standwright.viewer.hand.change.Thing;
import org.standwright.viewer.work.Desk;

/**
 * A picture that is edited by hand, with its tools above it and what is picked below it.
 *
 * @param <A> what may be done to what is picked
 */
final class HandPane<A> extends BorderPane {
    private final Desk desk;
    private final Words words;
    private final Matched matched;
    private final Trial trial;
    private final Face face = new Face();
    private final Grasp grasp;
    private final Label told = new Label();
    private final Label refused = new Label();
    private final Label instead = new Label();
    private final ContextMenu menu = new ContextMenu();
    private Optional<Subject<A>> subject = Optional.empty();
    private Optional<String> picked = Optional.empty();

    /**
     * What it says.
     *
     * @param hint where nothing is picked
     * @param otherwise where there is nothing to edit
     */
    record Words(String hint, String otherwise) {}

    /** @param reader makes what is edited of a text and what was built from it; nothing where that is something else */
    HandPane(Desk desk, List<Tool<A>> tools, Function<Matched.Pair, Optional<Subject<A>>> reader, Words words) {
        this.words = words;
        this.desk = desk;
        this.matched = new Matched(desk);
        this.trial = new Trial(desk);
        this.grasp = new Grasp(face, trial, this::click);
        getStyleClass().add("hand-pane");
        getStylesheets().add(HandPane.class.getResource("hand.css").toExternalForm());
        instead.setText(words.otherwise());
        instead.getStyleClass().add("instead");
        instead.setWrapText(true);
        told.getStyleClass().add("told");
        told.setWrapText(true);
        refused.getStyleClass().add("refused");
        refused.setWrapText(true);
        // over the picture, which keeps its size while something is dragged
        refused.setMouseTransparent(true);
        refused.setMaxWidth(Double.MAX_VALUE);
        StackPane.setAlignment(refused, Pos.BOTTOM_LEFT);
        setTop(new ToolRow<>(tools, this::use));
        setCenter(new StackPane(face, instead, refused));
        setBottom(told);
        for (var tool : tools) {
            var item = new MenuItem(tool.words());
            item.setAccelerator(tool.keys());
            item.setOnAction(event -> use(tool));
            menu.getItems().add(item);
        }
        face.setOnContextMenuRequested(this::menu);
        new Keys<>(this, face, grasp, tools, this::use);
        matched.pairProperty().subscribe(pair -> follow(pair.flatMap(reader)));
        trial.refusalProperty().subscribe(why -> {
            refused.setText("\u2716 " + why);
            refused.setVisible(!why.isEmpty());
        });
        desk.pickedProperty().subscribe(this::pickPart);
    }

    /** Lets the keyboard act on the picture. */
    void focus() {
        face.requestFocus();
    }

    private void follow(Optional<Subject<A>> now) {
        subject = now;
        face.show(now.map(Subject::picture));
        face.setVisible(now.isPresent());
        instead.setVisible(now.isEmpty());
        tell();
    }

    private void tell() {
        face.pick(picked);
        told.setText(face.thing(picked).map(Thing::words).orElse(words.hint()));
    }

    void pick(Optional<String> key) {
        if (!trial.isOn() && !key.equals(picked)) {
            trial.forget();
        }
        picked = key;
        tell();
        desk.pickedProperty().set(face.thing(key).flatMap(Thing::label));
    }

    /** Follows what was picked elsewhere. */
    private void pickPart(Optional<String> part) {
        var now = face.thing(picked);
        if (part.isEmpty()) {
            if (now.flatMap(Thing::label).isPresent()) {
                picked = Optional.empty();
                tell();
            }
        } else if (now.filter(thing -> thing.has(part.get())).isEmpty()) {
            picked = face.things().stream()
                    .filter(thing -> thing.has(part.get()))
                    .map(Thing::key)
                    .findFirst();
            tell();
        }
    }

    /** What is clicked on again leads to what it is a part of. */
    private void click(Optional<String> key) {
        if (key.isPresent() && key.equals(picked)) {
            pickAround();
        } else {
            pick(key);
        }
    }

    void pickAround() {
        face.thing(picked).flatMap(Thing::around).ifPresent(key -> pick(Optional.of(key)));
    }

    void pickBeside(int right, int up) {
        var neighbours = new Neighbours(face.things());
        var next = face.thing(picked)
                .map(from -> neighbours.beside(from, right, up))
                .orElseGet(neighbours::first);
        next.ifPresent(thing -> pick(Optional.of(thing.key())));
    }

    /** Whether there was something to escape from. */
    boolean escape() {
        if (trial.isOn() || grasp.holdsSomething()) {
            grasp.cancel();
            return true;
        }
        if (picked.isPresent()) {
            pick(Optional.empty());
            return true;
        }
        return false;
    }

    void nudge(int right, int up, boolean edge) {
        var way = right == 0 ? Handle.Way.UP_AND_DOWN : Handle.Way.LEFT_AND_RIGHT;
        if (grasp.holdsSomething() || isReady()) {
            picked.flatMap(key -> subject.flatMap(now -> now.handle(key, way, edge)))
                    .ifPresent(handle -> grasp.nudge(handle, right, up));
        }
    }

    /** Whether what is seen is what stands on the desk. */
    private boolean isReady() {
        return matched.isPresent() && !trial.isOn();
    }

    private void use(Tool<A> tool) {
        grasp.keep();
        trial.forget();
        if (subject.isEmpty() || !isReady()) {
            return;
        }
        var deed = subject.get().deed(tool.action(), picked.orElse(""));
        if (deed.text().isEmpty()) {
            trial.refuse(deed.whyNot());
        } else {
            trial.show(deed.text().get());
            trial.keep(deed.what(), () -> pick(deed.then()));
        }
        focus();
    }

    private void menu(ContextMenuEvent event) {
        if (subject.isPresent()) {
            if (!event.isKeyboardTrigger()) {
                face.thingAt(event.getX(), event.getY()).ifPresent(thing -> pick(Optional.of(thing.key())));
            }
            menu.show(face, event.getScreenX(), event.getScreenY());
            event.consume();
        }
    }
}
