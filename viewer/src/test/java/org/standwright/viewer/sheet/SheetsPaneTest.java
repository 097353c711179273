package org.standwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.viewer.Examples;
import org.standwright.viewer.MemoryScreen;
import org.standwright.viewer.work.Job;

class SheetsPaneTest {
    private final SimpleObjectProperty<Optional<Job>> job =
            new SimpleObjectProperty<>(Optional.of(SheetsModelTest.job(Examples.planerStand())));
    private final SimpleBooleanProperty planning = new SimpleBooleanProperty(false);
    private final SimpleObjectProperty<Optional<String>> picked = new SimpleObjectProperty<>(Optional.empty());
    private SheetsPane pane;
    private MemoryScreen screen;

    @BeforeEach
    void open() {
        screen = MemoryScreen.show(() -> {
            pane = new SheetsPane(job, planning, picked);
            return pane;
        });
        screen.await(() -> pane.model().sheet().isPresent());
    }

    private String text(String styleClass) {
        return screen.hands().lookup(styleClass).<Label>query().getText();
    }

    private long count(String styleClass) {
        return screen.get(() ->
                pane.lookupAll(styleClass).stream().filter(Node::isVisible).count());
    }

    /** Cuts that are faded because they are still to come. */
    private int toCome() {
        return screen.get(() -> {
            var faded = (Path) pane.lookup(".to-come");
            return faded.isVisible() ? faded.getElements().size() / 2 : 0;
        });
    }

    private LaidPart first() {
        return screen.get(() -> pane.model().parts().get(0));
    }

    @Test
    void saysWhatThePlanComesTo() {
        assertThat(text(".plan-words"))
                .startsWith("Birch plywood 18 mm: ")
                .contains("no plan can do with less", "Parts ", " %, waste ");
    }

    @Test
    void aClickOnAPiecePicksItsPartAndMarksIt() {
        var laid = first();
        var at = screen.get(() -> {
            var rect = pane.model().sheet().orElseThrow().onPaper(laid.area());
            var sight = pane.view().sightProperty().get();
            return pane.view().localToScreen(sight.x(rect.x0() + 2), sight.y(rect.y0() + 2));
        });
        screen.hands().clickOn(at.getX(), at.getY());

        assertThat(picked.get()).contains(laid.part());
        assertThat(count(".picked-piece")).isOne();
    }

    @Test
    void aPartThatIsPickedElsewhereIsMarkedWhereItLies() {
        var last = screen.get(() -> pane.model().planProperty().getValue().orElseThrow());
        var laid = last.parts().get(last.parts().size() - 1);
        screen.run(() -> picked.set(Optional.of(laid.part())));

        var mark = screen.get(() -> (Rectangle) pane.lookup(".picked-piece"));
        var rect = last.papers().get(laid.paper()).onPaper(laid.area());
        assertThat(mark.getX()).isEqualTo(rect.x0());
        assertThat(mark.getY()).isEqualTo(rect.y0());
        assertThat(mark.getWidth()).isEqualTo(rect.width());
        screen.run(() -> picked.set(Optional.empty()));
        assertThat(count(".picked-piece")).isZero();
    }

    @Test
    void aLineOfTheListPicksItsPart() {
        var laid = first();
        screen.hands().clickOn(laid.words(Examples.planerStand().units()));

        assertThat(picked.get()).contains(laid.part());
    }

    @Test
    void buttonsStepThroughTheCuts() {
        int all = screen.get(
                () -> pane.model().sheet().orElseThrow().sheet().cuts().size());
        assertThat(toCome()).isZero();
        screen.hands().clickOn(".next");

        assertThat(text(".place").startsWith("Cut 1 of ")).isTrue();
        assertThat(text(".how")).startsWith("Set-up 1: ");
        assertThat(count(".now")).isOne();
        assertThat(toCome()).isEqualTo(all - 1);
        assertThat(count(".panel")).isOne();
        screen.hands().clickOn(".last");
        assertThat(toCome()).isZero();
        assertThat(text(".frees")).startsWith("Falls free: ");
        screen.hands().clickOn(".first");
        screen.hands().clickOn(".previous");
        assertThat(count(".now")).isZero();
    }

    @Test
    void keysStepThroughTheCutsAndTurnTheSheets() {
        screen.hands()
                .press(KeyCode.ALT)
                .type(KeyCode.RIGHT)
                .type(KeyCode.RIGHT)
                .release(KeyCode.ALT);
        assertThat(text(".place")).startsWith("Cut 2 of ");
        screen.hands().press(KeyCode.ALT).type(KeyCode.LEFT).release(KeyCode.ALT);
        assertThat(text(".place")).startsWith("Cut 1 of ");
        screen.hands().type(KeyCode.PAGE_DOWN);
        assertThat(pane.model().paperProperty().get()).isEqualTo(1);
    }

    @Test
    void playsCutAfterCutUntilItIsPaused() {
        screen.hands().clickOn(".play");
        screen.await(() -> pane.model().doneProperty().get() >= 2);
        screen.hands().clickOn(".play");
        int paused = pane.model().doneProperty().get();

        assertThat(screen.hands().lookup(".play").query().getAccessibleText()).startsWith("Play");
        assertThat(paused).isBetween(2, 4);
    }

    @Test
    void saysThatABetterPlanIsLookedFor() {
        screen.run(() -> planning.set(true));

        assertThat(text(".working")).isEqualTo("Looking for a better plan …");
    }

    @Test
    void isEmptyWhenThereIsNoPlan() {
        screen.run(() -> job.set(Optional.empty()));

        assertThat(text(".plan-words")).isEqualTo("No sheets to cut.");
        assertThat(text(".cut-bar .place")).isEqualTo("No cuts");
    }
}
