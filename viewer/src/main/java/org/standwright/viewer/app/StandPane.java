package org.standwright.viewer.app;

import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.standwright.viewer.scene.AssemblyView;

/** The content of the window: heading, banner, and the stand in 3D. */
final class StandPane extends BorderPane {
    private final StandModel model;

    StandPane(StandModel model) {
        this.model = model;
        getStylesheets().add(StandPane.class.getResource("viewer.css").toExternalForm());
        setTop(new VBox(heading(), banner()));
        setCenter(canShow3d() ? view() : insteadOf3d());
    }

    /** Whether this screen's driver can draw in 3D. */
    static boolean canShow3d() {
        return Platform.isSupported(ConditionalFeature.SCENE3D);
    }

    private Node heading() {
        var name = styled("name", new Label());
        name.textProperty()
                .bind(model.standProperty()
                        .map(stand -> stand.map(OpenedStand::name).orElse("Standwright")));
        var sizes = styled("sizes", new Label());
        sizes.textProperty().bind(model.sizes());
        var space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        var hint = styled("hint", new Label("drag: turn · wheel: zoom · double click: fit"));
        return styled("heading", new HBox(name, sizes, space, hint));
    }

    private Node banner() {
        var banner = styled("banner", new Label());
        banner.setMaxWidth(Double.MAX_VALUE);
        banner.textProperty().bind(model.problemProperty());
        banner.visibleProperty().bind(Bindings.isNotEmpty(model.problemProperty()));
        banner.managedProperty().bind(banner.visibleProperty());
        return banner;
    }

    private Node view() {
        var view = new AssemblyView();
        model.standProperty().subscribe(stand -> stand.ifPresent(opened -> view.show(opened.scenery())));
        return view;
    }

    private static Node insteadOf3d() {
        return new StackPane(styled(
                "instead-of-3d",
                new Label("The graphics driver of this screen cannot draw in 3D, so the stand cannot be shown here."
                        + " Update the driver, or start with -Dprism.forceGPU=true to use a driver that is not on"
                        + " JavaFX's list.")));
    }

    private static <N extends Node> N styled(String styleClass, N node) {
        node.getStyleClass().add(styleClass);
        return node;
    }
}
