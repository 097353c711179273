package org.standwright.viewer.finding;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.design.built.Furniture;
import org.standwright.unit.Units;
import org.standwright.viewer.button.Sign;
import org.standwright.viewer.paper.Working;

/** What the rules say, the heaviest first, with the caution that always stands below it. */
public final class FindingsPane extends BorderPane {
    /** Said on every screen, whatever the findings. */
    public static final String STANDING_CAUTION =
            "Arithmetic for planning, not a structural design service. Follow the machine's manual, your local"
                    + " codes and, where it takes one, a licensed professional.";

    private final FindingsModel model;
    private final ObservableValue<Units> units;
    private final ObjectProperty<Optional<String>> picked;
    private final Consumer<Finding> apply;
    private final Slices open = new Slices();
    private final Slices accepted = new Slices();
    private final TitledPane fold = new TitledPane("", accepted);
    private final Label nothing = new Label();

    /**
     * @param furniture whose parts the findings may be about
     * @param trying whether cures are being tried
     * @param picked label of the part that all panes point at
     * @param apply changes the design as a finding's cure says
     */
    public FindingsPane(
            ObservableValue<List<Finding>> findings,
            ObservableValue<Optional<Furniture>> furniture,
            ObservableValue<Units> units,
            ObservableValue<Boolean> trying,
            ObjectProperty<Optional<String>> picked,
            Consumer<Finding> apply) {
        this.model = new FindingsModel(findings, furniture);
        this.units = units;
        this.picked = picked;
        this.apply = apply;
        getStyleClass().add("findings-pane");
        getStylesheets().add(FindingsPane.class.getResource("finding.css").toExternalForm());
        setTop(filters(trying));
        setCenter(list());
        setBottom(caution());
        model.openProperty().subscribe(now -> open());
        findings.subscribe(now -> accepted());
        units.subscribe(() -> {
            open();
            accepted();
        });
    }

    private Node filters(ObservableValue<Boolean> trying) {
        var filters = new FlowPane();
        filters.getStyleClass().add("filters");
        for (var severity : Severity.values()) {
            filters.getChildren().add(filter(severity));
        }
        filters.getChildren().add(Working.of(trying, "Trying cures …"));
        return filters;
    }

    /** 'Stops 2': a button that stays down while they are shown. */
    private ToggleButton filter(Severity severity) {
        var weight = Weight.of(severity);
        var button = new ToggleButton();
        button.getStyleClass().addAll("filter", weight.styleClass());
        button.selectedProperty().bindBidirectional(model.shownProperty(severity));
        button.setTooltip(new Tooltip("Show or hide: " + weight.many()));
        Sign.on(button, weight.sign());
        model.findingsProperty().subscribe(now -> button.setText(weight.many() + " " + model.count(severity)));
        return button;
    }

    private Node list() {
        fold.setExpanded(false);
        fold.setAnimated(false);
        fold.getStyleClass().add("accepted");
        nothing.getStyleClass().add("nothing");
        nothing.setWrapText(true);
        var content = new VBox(nothing, open, fold);
        content.getStyleClass().add("content");
        var scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        return scroll;
    }

    private static Node caution() {
        var caution = new Label(STANDING_CAUTION);
        caution.getStyleClass().add("standing-caution");
        caution.setWrapText(true);
        caution.setMinHeight(USE_PREF_SIZE);
        caution.setMaxWidth(Double.MAX_VALUE);
        return caution;
    }

    private void open() {
        var findings = model.openProperty().getValue();
        open.show(texts(findings), this::card);
        nothing.setVisible(findings.isEmpty());
        nothing.setManaged(findings.isEmpty());
    }

    private void accepted() {
        var findings = model.accepted();
        fold.setText("Accepted as it is: " + findings.size());
        nothing.setText(
                model.findingsProperty().getValue().isEmpty()
                        ? "Nothing was checked yet."
                        : "Nothing to say of what is shown; the buttons above show more.");
        fold.setVisible(!findings.isEmpty());
        fold.setManaged(!findings.isEmpty());
        accepted.show(texts(findings), this::card);
    }

    private List<CardText> texts(List<Finding> findings) {
        return findings.stream()
                .map(finding -> CardText.of(finding, units.getValue(), model.part(finding)))
                .toList();
    }

    private FindingCard card(CardText text) {
        return new FindingCard(text, label -> picked.set(Optional.of(label)), apply);
    }
}
