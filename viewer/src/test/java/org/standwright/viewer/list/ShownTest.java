package org.standwright.viewer.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ShownTest {
    private static List<String> sorted(Shown... cells) {
        return Stream.of(cells).sorted().map(Shown::words).toList();
    }

    @Test
    void wordsAreSortedWithTheirNumbersByValue() {
        assertThat(sorted(Shown.of("shelf 10"), Shown.of("Shelf 2"), Shown.of("drawer 1.10"), Shown.of("drawer 1.9")))
                .containsExactly("drawer 1.9", "drawer 1.10", "Shelf 2", "shelf 10");
    }

    @Test
    void figuresAreSortedByWhatTheyMean() {
        assertThat(sorted(new Shown("34 1/2", 876.3), new Shown("9 1/4", 235), new Shown("100", 2540)))
                .containsExactly("9 1/4", "34 1/2", "100");
    }

    @Test
    void rowsAreCopiedWithoutTabsOrLineEndsOfTheirOwn() {
        assertThat(TabbedText.of(List.of(List.of("A", "side\tleft"), List.of("B", "two\nlines"))))
                .isEqualTo("A\tside left\nB\ttwo lines");
    }
}
