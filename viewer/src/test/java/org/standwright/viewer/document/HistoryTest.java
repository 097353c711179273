package org.standwright.viewer.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HistoryTest {
    private static final Document FIRST = new Document("Open", "{}");
    private static final Document SECOND = new Document("Change height", "{\"height\": 900}");
    private static final Document THIRD = new Document("Change width", "{\"width\": 600}");

    @Test
    void goesBackAndForthThroughAllStates() {
        var history = History.of(FIRST).with(SECOND).with(THIRD);

        assertThat(history.undone().undone().present()).isSameAs(FIRST);
        assertThat(history.undone().undone().redone().redone().present()).isSameAs(THIRD);
    }

    @Test
    void staysAtItsEnds() {
        var history = History.of(FIRST).with(SECOND);

        assertThat(history.redone()).isEqualTo(history);
        assertThat(history.undone().undone().undone().present()).isSameAs(FIRST);
    }

    @Test
    void saysWhatIsTakenBackAndDoneAgain() {
        var history = History.of(FIRST).with(SECOND).with(THIRD).undone();

        assertThat(history.undoes()).contains("Change height");
        assertThat(history.redoes()).contains("Change width");
        assertThat(History.of(FIRST).undoes()).isEmpty();
    }

    @Test
    void forgetsWhatWasUndoneWhenSomethingElseIsDone() {
        var history = History.of(FIRST).with(SECOND).undone().with(THIRD);

        assertThat(history.states()).containsExactly(FIRST, THIRD);
        assertThat(history.redoes()).isEmpty();
    }
}
