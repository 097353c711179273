package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ScrewUseTest {
    @Test
    void namesTheLargestShareButNotTheSimpleScreen() {
        assertThat(new ScrewUse(0.8, 0.5, 0.7, 1.3, 0.2).weakest()).isEqualTo(WeakLink.WITHDRAWAL);
        assertThat(new ScrewUse(0.5, 0.8, 0.7, 1.3, 0.2).weakest()).isEqualTo(WeakLink.LATERAL);
        assertThat(new ScrewUse(0.5, 0.5, 0.7, 1.0, 0.2).weakest()).isEqualTo(WeakLink.COMBINED);
        assertThat(new ScrewUse(0.5, 0.5, 0.7, 1.0, 0.9).weakest()).isEqualTo(WeakLink.PULL_THROUGH);
        assertThat(new ScrewUse(0.5, 0.5, 0.7, 1.0, 0.9).most()).isEqualTo(0.9);
    }

    @Test
    void namesTheFirstOfEquals() {
        assertThat(new ScrewUse(0.5, 0.5, 0.5, 1, 0.5).weakest()).isEqualTo(WeakLink.WITHDRAWAL);
    }
}
