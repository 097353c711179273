package org.standwright.viewer.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.design.built.Furniture;
import org.standwright.unit.Units;
import org.standwright.viewer.Examples;
import org.standwright.viewer.MemoryScreen;

class FindingsPaneTest {
    private final SimpleObjectProperty<List<Finding>> findings = new SimpleObjectProperty<>(List.of());
    private final SimpleObjectProperty<Optional<Furniture>> furniture =
            new SimpleObjectProperty<>(Optional.of(Examples.planerStand().furniture()));
    private final SimpleObjectProperty<Units> units = new SimpleObjectProperty<>(Units.MM);
    private final SimpleBooleanProperty trying = new SimpleBooleanProperty(false);
    private final SimpleObjectProperty<Optional<String>> picked = new SimpleObjectProperty<>(Optional.empty());
    private final List<Finding> applied = new ArrayList<>();
    private MemoryScreen screen;

    @BeforeEach
    void open() {
        screen = MemoryScreen.show(() -> new FindingsPane(findings, furniture, units, trying, picked, applied::add));
    }

    private void show(Finding... some) {
        screen.run(() -> findings.set(List.of(some)));
        screen.await(() -> cards().size()
                == List.of(some).stream().filter(Finding::isWorthSaying).count());
    }

    private List<Node> cards() {
        return List.copyOf(screen.scene().getRoot().lookupAll(".finding-card"));
    }

    private List<String> texts(String styleClass) {
        return screen.get(() -> screen.scene().getRoot().lookupAll(styleClass).stream()
                .map(node -> ((Label) node).getText())
                .toList());
    }

    @Test
    void saysSignWordSubjectMessageFigureLimitAndSource() {
        show(Made.sag(2));

        assertThat(texts(".finding-card .weight")).containsExactly("Stop");
        assertThat(texts(".finding-card .subject")).containsExactly("worktop");
        assertThat(texts(".finding-card .message")).containsExactly("It sags 2.0 mm.");
        assertThat(texts(".finding-card .figure")).containsExactly("2 mm");
        assertThat(texts(".finding-card .limit")).containsExactly("at most 0.5 mm, a stop above 1.5 mm");
        assertThat(texts(".finding-card .source")).containsExactly("statics");
        assertThat(screen.get(() -> ((Label) screen.scene().lookup(".weight")).getGraphic()))
                .isNotNull();
    }

    @Test
    void aCureIsAppliedByItsButton() {
        var finding = Made.cured(2);
        show(Made.stop("b"), finding);
        screen.hands().clickOn("Apply: a second worktop layer");

        assertThat(applied).containsExactly(finding);
    }

    @Test
    void aCardThatStaysAppliesTheCureOfTheNewestDesign() {
        show(Made.cured(2));
        var card = cards().get(0);
        var newer = Made.cured(2).remedies(List.of());
        show(newer);
        screen.hands().clickOn("Apply: a second worktop layer");

        assertThat(cards()).containsExactly(card);
        assertThat(applied).hasSize(1);
        assertThat(applied.get(0)).isSameAs(newer);
    }

    @Test
    void clickingAFindingPicksItsPart() {
        show(Made.stop("left side"), Made.caution("whole stand"));
        screen.hands().clickOn("A stop about left side.");
        assertThat(picked.get()).contains("left side");

        screen.hands().clickOn("A caution about whole stand.");
        assertThat(picked.get()).contains("left side");
    }

    @Test
    void enterOnAFindingPicksItsPart() {
        show(Made.stop("left side"));
        screen.run(() -> cards().get(0).requestFocus());
        screen.hands().type(KeyCode.ENTER);

        assertThat(picked.get()).contains("left side");
    }

    @Test
    void whyOpensFormulaAndNumbers() {
        show(Made.sag(2));
        screen.hands().clickOn("Why");

        assertThat(texts(".why .meaning")).contains("f = 5 q L^4 / (384 E I)", "= 700 mm, span", "Simply supported.");
        screen.hands().clickOn("Why");
        assertThat(screen.get(() -> screen.scene().lookup(".why"))).isNull();
    }

    @Test
    void aFilterHidesNotes() {
        show(Made.stop("a"), Made.note("b"), Made.note("c"));
        screen.hands().clickOn("Notes 2");

        assertThat(texts(".finding-card .weight")).containsExactly("Stop");
        screen.hands().clickOn("Notes 2");
        screen.await(() -> cards().size() == 3);
        assertThat(texts(".finding-card .weight")).containsExactly("Stop", "Note", "Note");
    }

    @Test
    void whatIsAcceptedIsFoldedAwayWithItsReason() {
        screen.run(() -> findings.set(List.of(Made.stop("a").waivedFor("It stands still."))));
        assertThat(texts(".nothing")).singleElement().asString().startsWith("Nothing to say");

        screen.hands().clickOn("Accepted as it is: 1");
        screen.await(() -> !texts(".reason").isEmpty());
        assertThat(texts(".reason")).containsExactly("Accepted: It stands still.");
        assertThat(texts(".finding-card .weight")).containsExactly("Accepted stop");
    }

    @Test
    void theStandingCautionIsAlwaysThere() {
        assertThat(texts(".standing-caution")).containsExactly(FindingsPane.STANDING_CAUTION);
        show(Made.stop("a"));
        assertThat(texts(".standing-caution")).containsExactly(FindingsPane.STANDING_CAUTION);
    }

    @Test
    void saysThatCuresAreBeingTried() {
        screen.run(() -> trying.set(true));

        assertThat(texts(".working")).containsExactly("Trying cures …");
    }
}
