package org.standwright.viewer.sheet;

import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.viewer.button.IconButton;
import org.standwright.viewer.button.Sign;

/** Steps through the cuts, and says of each how it is made and what falls free. */
final class CutBar extends VBox {
    private static final Duration BETWEEN_CUTS = Duration.millis(1200);

    private final SheetsModel model;
    private final Label place = label("place");
    private final Label how = label("how");
    private final Label frees = label("frees");
    private final Button play = IconButton.of(Feather.PLAY, "Play: cut after cut", this::play);
    private final Timeline playing = new Timeline(new KeyFrame(BETWEEN_CUTS, event -> playOn()));

    CutBar(SheetsModel model) {
        this.model = model;
        getStyleClass().add("cut-bar");
        playing.setCycleCount(Timeline.INDEFINITE);
        playing.statusProperty().subscribe(this::showPlaying);
        play.getStyleClass().add("play");
        var buttons = new FlowPane(
                button(Feather.SKIP_BACK, "First cut (Alt+Home)", model::firstCut, "first"),
                button(Feather.CHEVRON_LEFT, "Previous cut (Alt+Left)", model::previousCut, "previous"),
                play,
                button(Feather.CHEVRON_RIGHT, "Next cut (Alt+Right)", model::nextCut, "next"),
                button(Feather.SKIP_FORWARD, "Last cut (Alt+End)", model::lastCut, "last"),
                place);
        buttons.getStyleClass().add("buttons");
        getChildren().addAll(buttons, how, frees);
        model.planProperty().subscribe(this::show);
        model.paperProperty().subscribe(this::show);
        model.doneProperty().subscribe(this::show);
        show();
    }

    private static Button button(Feather sign, String words, Runnable action, String styleClass) {
        var button = IconButton.of(sign, words, action);
        button.getStyleClass().add(styleClass);
        return button;
    }

    private static Label label(String styleClass) {
        var label = new Label();
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    private void show() {
        place.setText(model.place());
        var step = model.step();
        var units = model.planProperty().getValue().map(DrawnPlan::units);
        how.setText(step.map(
                        cut -> cut.stage() + cut.how(model.sheet().orElseThrow().material(), units.orElseThrow()))
                .orElse("Step through the cuts in the order in which they are sawn."));
        frees.setText(
                step.map(CutStep::frees).orElse("A set-up is sawn through on every sheet before the fence moves."));
    }

    private void play() {
        if (playing.getStatus() == Timeline.Status.RUNNING) {
            playing.stop();
            return;
        }
        if (model.isLastCut()) {
            model.firstCut();
        } else {
            model.nextCut();
        }
        playing.play();
    }

    /** Nobody looks at a bar that is out of its window. */
    private void playOn() {
        model.nextCut();
        if (model.isLastCut() || getScene() == null) {
            playing.stop();
        }
    }

    private void showPlaying() {
        boolean runs = playing.getStatus() == Timeline.Status.RUNNING;
        Sign.on(play, runs ? Feather.PAUSE : Feather.PLAY);
        play.setAccessibleText(runs ? "Pause" : "Play: cut after cut");
    }
}
