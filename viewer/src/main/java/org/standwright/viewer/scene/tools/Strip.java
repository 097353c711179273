package org.standwright.viewer.scene.tools;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Separator;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;
import org.standwright.viewer.button.IconButton;
import org.standwright.viewer.scene.Lens;
import org.standwright.viewer.scene.SceneModel;
import org.standwright.viewer.scene.StandardView;

/** All buttons of the 3D view. */
final class Strip extends FlowPane {
    private final SceneModel model;

    /** @param picture saves one */
    Strip(SceneModel model, AroundModel around, SectionModel section, MeasureModel measure, Runnable picture) {
        this.model = model;
        getStyleClass().add("tools");
        getChildren().setAll(looking());
        getChildren()
                .addAll(
                        IconButton.of(Feather.CAMERA, "Save a picture … (C)", picture),
                        divider(),
                        new AroundMenu(around),
                        IconButton.toggle(Feather.SCISSORS, "Cut it open (X)", section.onProperty()),
                        IconButton.toggle(Feather.EDIT_3, "Measure between two faces (M)", measure.onProperty()),
                        divider(),
                        IconButton.toggle(Feather.BOX, "Lines at edges (E)", model.edgesProperty()));
        getChildren().addAll(picking());
        getChildren().add(divider());
        getChildren().addAll(taking());
    }

    private List<Node> looking() {
        var views = new MenuButton("", new FontIcon(Feather.EYE));
        views.getStyleClass().addAll("button-icon", "flat");
        views.setTooltip(new Tooltip("Standard views (1 to 6)"));
        views.setAccessibleText("Standard views");
        for (var view : StandardView.values()) {
            var item = new MenuItem(words(view) + "  (" + (view.ordinal() + 1) + ")");
            item.setOnAction(chosen -> model.seeFrom(view));
            views.getItems().add(item);
        }
        var lens = IconButton.of(Feather.MAXIMIZE_2, "", model.viewpoint()::swapLens);
        model.viewpoint().lensProperty().subscribe(now -> {
            var words = now == Lens.PERSPECTIVE ? "In perspective; parallel with P" : "Parallel; in perspective with P";
            lens.getTooltip().setText(words);
            lens.setAccessibleText(words);
        });
        return List.of(IconButton.of(Feather.MAXIMIZE, "Show all of it (F, double click)", model::fit), views, lens);
    }

    private static String words(StandardView view) {
        return switch (view) {
            case FRONT -> "Front";
            case BACK -> "Back";
            case LEFT -> "Left";
            case RIGHT -> "Right";
            case TOP -> "Top";
            case THREE_QUARTER -> "Three quarters";
        };
    }

    private List<Node> picking() {
        var none = model.pickedProperty().map(picked -> picked.isEmpty());
        var hide = IconButton.of(Feather.EYE_OFF, "Hide the picked part (H)", model::hidePicked);
        var alone = IconButton.of(Feather.CROSSHAIR, "Only the picked part (I)", model::isolatePicked);
        hide.disableProperty().bind(none);
        alone.disableProperty().bind(none);
        return List.of(
                IconButton.toggle(
                        Feather.DROPLET, "See through all but the picked part (T)", model.seeThroughProperty()),
                hide,
                alone,
                IconButton.of(Feather.SUN, "Show every part again (A)", model::showAll));
    }

    private List<Node> taking() {
        var apart = new Slider(0, 1, 0);
        apart.setAccessibleText("How far things are drawn apart");
        apart.setTooltip(new Tooltip("Draw things apart"));
        apart.valueProperty().bindBidirectional(model.explosionProperty());
        var step = new Label();
        step.getStyleClass().add("step");
        step.textProperty().bind(Bindings.createStringBinding(this::step, model.stepProperty(), model.stepsProperty()));
        return List.of(
                new Label("Apart"),
                apart,
                IconButton.of(Feather.LOG_OUT, "Open every drawer (Shift+O; one: O)", model::openAll),
                IconButton.of(Feather.LOG_IN, "Close every drawer (Shift+O)", model::closeAll),
                divider(),
                IconButton.of(Feather.CHEVRON_LEFT, "One step of assembly back (Page Down)", () -> model.stepBy(-1)),
                step,
                IconButton.of(Feather.CHEVRON_RIGHT, "One step of assembly on (Page Up)", () -> model.stepBy(1)));
    }

    private String step() {
        int at = model.stepProperty().get();
        var steps = model.stepsProperty().get();
        return at <= 0 || at > steps.size()
                ? ""
                : "Step " + at + " of " + steps.size() + ": "
                        + steps.get(at - 1).name();
    }

    private static Node divider() {
        return new Separator(Orientation.VERTICAL);
    }
}
