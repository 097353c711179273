package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class NewestTest {
    private final Queue<Runnable> background = new ArrayDeque<>();
    private final List<String> shown = new ArrayList<>();
    private final List<Integer> worked = new ArrayList<>();
    private final Newest<Integer, String> newest = new Newest<>(this::work, shown::add, background::add, Runnable::run);

    private String work(int number) {
        worked.add(number);
        if (number == 1) {
            newest.ask(2); // while the first is worked out
            newest.ask(3);
        }
        if (number == 13) {
            throw new IllegalStateException("unlucky");
        }
        return "no. " + number;
    }

    @Test
    void leavesOutWhatWaitedWhenSomethingNewerCame() {
        newest.ask(1);
        runAll();

        assertThat(worked).containsExactly(1, 3);
        assertThat(shown).containsExactly("no. 1", "no. 3");
    }

    @Test
    void worksOnAfterItWasIdle() {
        newest.ask(4);
        runAll();
        newest.ask(5);
        runAll();

        assertThat(shown).containsExactly("no. 4", "no. 5");
    }

    @Test
    void letsTheScreenKnowOfAFault() {
        newest.ask(13);

        assertThatThrownBy(this::runAll).hasMessage("unlucky");
    }

    private void runAll() {
        while (!background.isEmpty()) {
            background.remove().run();
        }
    }
}
