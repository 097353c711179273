package org.standwright.viewer.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Drawing;
import org.standwright.viewer.MemoryScreen;

class PagesPaneTest {
    private final SimpleObjectProperty<List<Drawing>> pages = new SimpleObjectProperty<>(PagesModelTest.pages(4));
    private final SimpleBooleanProperty working = new SimpleBooleanProperty(false);
    private final List<List<String>> printed = new ArrayList<>();
    private PagesPane pane;
    private MemoryScreen screen;

    @BeforeEach
    void open() {
        screen = MemoryScreen.show(() -> {
            pane = new PagesPane(pages, working, (chosen, owner, said) -> {
                printed.add(chosen.stream().map(Drawing::title).toList());
                said.accept("sent to the printer");
            });
            return pane;
        });
    }

    private String shown() {
        return screen.get(() -> pane.shown().orElseThrow().title());
    }

    @Test
    void keysTurnThePages() {
        screen.hands().type(KeyCode.PAGE_DOWN).type(KeyCode.PAGE_DOWN);
        assertThat(shown()).isEqualTo("page 3");
        screen.hands().type(KeyCode.PAGE_UP);
        assertThat(shown()).isEqualTo("page 2");
        screen.hands().type(KeyCode.END);
        assertThat(shown()).isEqualTo("page 4");
        screen.hands().type(KeyCode.HOME);
        assertThat(shown()).isEqualTo("page 1");
    }

    @Test
    void buttonsTurnThePagesAndSayWhereOneIs() {
        screen.hands().clickOn(".next");

        assertThat(shown()).isEqualTo("page 2");
        assertThat(screen.hands().lookup(".place").<Label>query().getText()).isEqualTo("Page 2 of 4");
    }

    @Test
    void aSmallPageOpensTheLargeOne() {
        screen.hands().clickOn("3");

        assertThat(shown()).isEqualTo("page 3");
    }

    @Test
    void printsTheOnePageOrAllOfThem() {
        screen.hands().type(KeyCode.PAGE_DOWN);
        screen.hands().clickOn("Print page …");
        screen.hands().clickOn("Print all …");

        assertThat(printed).containsExactly(List.of("page 2"), List.of("page 1", "page 2", "page 3", "page 4"));
        assertThat(screen.hands().lookup(".status").<Label>query().getText()).isEqualTo("sent to the printer");
    }

    @Test
    void printsNothingWhenThereAreNoPages() {
        screen.run(() -> pages.set(List.of()));
        screen.run(pane::printAll);

        assertThat(printed).isEmpty();
        assertThat(screen.hands().lookup(".status").<Label>query().getText()).contains("no pages");
    }

    @Test
    void staysAtItsPageWhenTheyAreLaidOutAgain() {
        screen.hands().type(KeyCode.PAGE_DOWN);
        screen.run(() -> working.set(true));
        assertThat(screen.hands().lookup(".working").<Label>query().isVisible()).isTrue();
        screen.run(() -> {
            pages.set(PagesModelTest.pages(6));
            working.set(false);
        });

        assertThat(shown()).isEqualTo("page 2");
        assertThat(screen.hands().lookup(".place").<Label>query().getText()).isEqualTo("Page 2 of 6");
        assertThat(screen.hands().lookup(".working").<Label>query().isVisible()).isFalse();
    }
}
