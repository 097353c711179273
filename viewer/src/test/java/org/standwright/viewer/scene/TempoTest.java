package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Handed the time of each picture, as the screen would. */
class TempoTest {
    private static final long MILLISECOND = 1_000_000;

    private int told;
    private final Tempo tempo = new Tempo(() -> told++);

    @Test
    void saysOnceThatPicturesComeTooSlowly() {
        pictures(20, 60);

        assertThat(tempo.isSlow()).isTrue();
        assertThat(told).isOne();
    }

    @Test
    void isContentWithThirtyPicturesASecond() {
        pictures(20, 33);

        assertThat(tempo.isSlow()).isFalse();
        assertThat(told).isZero();
    }

    @Test
    void doesNotJudgeBeforeItHasSeenAFew() {
        pictures(5, 200);

        assertThat(tempo.isSlow()).isFalse();
    }

    @Test
    void remembersThatItWasSlowUntilThereIsTimeToSpare() {
        pictures(10, 60);
        pictures(10, 30);
        tempo.rest();
        assertThat(tempo.isSlow()).isTrue();

        pictures(10, 10);
        tempo.rest();
        assertThat(tempo.isSlow()).isFalse();
    }

    private void pictures(int count, int milliseconds) {
        for (int i = 0; i < count; i++) {
            tempo.handle(i * milliseconds * MILLISECOND);
        }
    }
}
