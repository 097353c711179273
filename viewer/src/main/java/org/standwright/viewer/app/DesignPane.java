package org.standwright.viewer.app;

import java.util.Locale;
import java.util.stream.Stream;
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
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.viewer.scene.AssemblyView;

/** The content of the window: heading, banner, the furniture in 3D, and what to watch out for. */
final class DesignPane extends BorderPane {
    private final DesignModel model;

    DesignPane(DesignModel model) {
        this.model = model;
        getStylesheets().add(DesignPane.class.getResource("viewer.css").toExternalForm());
        setTop(new VBox(heading(), banner()));
        setCenter(canShow3d() ? view() : insteadOf3d());
        setBottom(findings());
    }

    /** Whether this screen's driver can draw in 3D. */
    static boolean canShow3d() {
        return Platform.isSupported(ConditionalFeature.SCENE3D);
    }

    private Node heading() {
        var name = styled("name", new Label());
        name.textProperty()
                .bind(model.designProperty()
                        .map(shown -> shown.map(OpenedDesign::name).orElse("Standwright")));
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
        model.designProperty().subscribe(shown -> shown.ifPresent(opened -> view.show(opened.scenery())));
        return view;
    }

    /** What can hurt someone is said on every screen; notes are left to the packet. */
    private Node findings() {
        var lines = styled("findings", new VBox());
        model.designProperty()
                .subscribe(shown -> lines.getChildren()
                        .setAll(Stream.concat(
                                        shown.stream().flatMap(DesignPane::warnings), Stream.of(standingCaution()))
                                .toList()));
        return lines;
    }

    private static Stream<Label> warnings(OpenedDesign opened) {
        return opened.findings().stream()
                .filter(finding -> finding.severity().compareTo(Severity.CAUTION) <= 0)
                .map(finding -> warning(finding, opened));
    }

    private static Label warning(Finding finding, OpenedDesign opened) {
        var word = finding.severity().name().toLowerCase(Locale.ROOT);
        return styled(
                word,
                new Label(word + ": " + finding.subject() + ": "
                        + finding.sentences(opened.product().units())));
    }

    private static Label standingCaution() {
        return new Label(
                "Arithmetic for planning, not a structural design service. Follow the machine's manual, your local"
                        + " codes and, where it takes one, a licensed professional.");
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
