package org.standwright.viewer.finding;

import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.viewer.button.Sign;

/** One finding with all that it has to say. A click on it, or Enter, picks the part that it is about. */
final class FindingCard extends VBox {
    private final CardText text;
    private final WhyGrid why;
    private Finding newest;

    /**
     * @param pick picks the part
     * @param apply applies its cure
     */
    FindingCard(CardText text, Consumer<String> pick, Consumer<Finding> apply) {
        this.text = text;
        this.newest = text.finding();
        this.why = new WhyGrid(text.why());
        var finding = text.finding();
        getStyleClass().addAll("finding-card", text.weight().styleClass());
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(text.weight().one() + ": " + finding.subject() + ": " + text.sentences());
        getChildren().addAll(heading(), wrapped(finding.message(), "message"));
        finding.gauge().ifPresent(gauge -> getChildren().add(gauge(gauge)));
        finding.waived().ifPresent(reason -> getChildren().add(wrapped("Accepted: " + reason, "reason")));
        finding.cure().ifPresent(cure -> getChildren().add(cure(cure, apply)));
        getChildren().add(foot());
        text.part().ifPresent(label -> listen(label, pick));
    }

    private void listen(String label, Consumer<String> pick) {
        addEventHandler(MouseEvent.MOUSE_CLICKED, event -> {
            requestFocus();
            pick.accept(label);
        });
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER && event.getTarget() == this) {
                pick.accept(label);
                event.consume();
            }
        });
    }

    /** The same words, said of a newer design. */
    void renew(Finding finding) {
        newest = finding;
    }

    private FlowPane heading() {
        boolean isAccepted = newest.waived().isPresent();
        var word = new Label(
                isAccepted
                        ? "Accepted " + text.weight().styleClass()
                        : text.weight().one());
        word.getStyleClass().add("weight");
        Sign.on(word, text.weight().sign());
        var subject = new Label(newest.subject());
        subject.getStyleClass().add("subject");
        text.part().ifPresent(label -> {
            Sign.on(subject, Feather.CROSSHAIR);
            subject.setTooltip(new Tooltip("Click, or press Enter, to show this part"));
        });
        return line("heading", word, subject);
    }

    private FlowPane gauge(Gauge gauge) {
        var figure = new Label(gauge.figureWords(text.units()));
        figure.getStyleClass().add("figure");
        var limit = new Label(gauge.limitWords(text.units()));
        limit.getStyleClass().add("limit");
        return line("gauge", figure, new GaugeBar(gauge), limit);
    }

    private static FlowPane line(String styleClass, Node... nodes) {
        var line = new FlowPane(nodes);
        line.getStyleClass().add(styleClass);
        return line;
    }

    private Button cure(Cure cure, Consumer<Finding> apply) {
        var button = new Button((cure.left().isPresent() ? "Better: " : "Apply: ") + cure.words());
        button.getStyleClass().add("cure");
        button.setWrapText(true);
        button.setMnemonicParsing(false);
        button.setMinHeight(USE_PREF_SIZE);
        button.setTooltip(new Tooltip("Changes the design: " + cure.outcome(text.units())));
        Sign.on(button, Feather.TOOL);
        button.setOnAction(event -> apply.accept(newest));
        return button;
    }

    private HBox foot() {
        var button = new ToggleButton("Why");
        button.getStyleClass().add("why-button");
        button.setMinWidth(USE_PREF_SIZE);
        button.setTooltip(new Tooltip("Formula, numbers and source"));
        Sign.on(button, Feather.HELP_CIRCLE);
        button.selectedProperty().subscribe(this::explain);
        var source = wrapped(newest.source(), "source");
        HBox.setHgrow(source, Priority.ALWAYS);
        var foot = new HBox(button, source);
        foot.getStyleClass().add("foot");
        return foot;
    }

    private void explain(boolean isAsked) {
        getChildren().remove(why);
        if (isAsked) {
            why.fill();
            getChildren().add(why);
        }
    }

    static Label wrapped(String words, String styleClass) {
        var label = new Label(words);
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
