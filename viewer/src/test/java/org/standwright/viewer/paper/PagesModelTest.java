package org.standwright.viewer.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Drawing;

class PagesModelTest {
    private final ObjectProperty<List<Drawing>> pages = new SimpleObjectProperty<>(pages(3));
    private final PagesModel model = new PagesModel(pages);

    static List<Drawing> pages(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Drawing("page " + number, 210, 297, List.of()))
                .toList();
    }

    @Test
    void startsAtTheFirstPage() {
        assertThat(model.words()).isEqualTo("Page 1 of 3");
        assertThat(model.page()).map(Drawing::title).contains("page 1");
    }

    @Test
    void turnsNoFurtherThanThereArePages() {
        model.previous();
        assertThat(model.words()).isEqualTo("Page 1 of 3");
        model.last();
        model.next();
        assertThat(model.words()).isEqualTo("Page 3 of 3");
    }

    @Test
    void looksAtTheSameNumberWhenThePagesChange() {
        model.go(1);
        pages.set(pages(5));
        assertThat(model.words()).isEqualTo("Page 2 of 5");
    }

    @Test
    void looksAtTheLastPageWhenThereAreFewer() {
        model.go(2);
        pages.set(pages(2));
        assertThat(model.words()).isEqualTo("Page 2 of 2");
    }

    @Test
    void comesBackToItsPageAfterThereWereNone() {
        model.go(2);
        pages.set(List.of());
        assertThat(model.words()).isEqualTo("No pages yet");
        assertThat(model.page()).isEmpty();
        pages.set(pages(4));
        assertThat(model.words()).isEqualTo("Page 3 of 4");
    }
}
