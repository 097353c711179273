package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.design.Hang;
import org.standwright.design.Loads;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Bar;

class RunnerScrewsTest {
    private static final RunnerScrews RULE = new RunnerScrews();

    @Test
    void carriesADrawerOfCloths() {
        assertThat(Asked.of(RULE, filled(100)))
                .containsExactly("FINE drawer 1.2: Open as far as it goes, it puts 131.7 N on the front end of each "
                        + "runner, 140.1 N on its front screw, which reaches 15 mm into the upright. "
                        + "Less than 21 mm is not rated.");
    }

    /** #6 of G 0.42 in G 0.42, 15 mm deep behind 30: 451.9 N by the yield modes, over 2.2 and times 0.9 184.9 N. */
    @Test
    void warnsOfADrawerOfTools() {
        assertThat(Asked.of(RULE, filled(500)))
                .containsExactly("CAUTION drawer 1.2: Open as far as it goes, it puts 375.2 N on the front end of "
                        + "each runner, 399 N on its front screw, which reaches 15 mm into the upright. Less "
                        + "than 21 mm is not rated.");
        assertThat(Asked.limit(RULE, Stands.loaded(filled(500)))).isEqualTo("at most 184.9 N, a stop above 451.9 N");
    }

    @Test
    void stopsADrawerOfCoins() {
        assertThat(Asked.of(RULE, filled(2000)))
                .containsExactly("STOP drawer 1.2: Open as far as it goes, it puts 1288 N on the front end of each "
                        + "runner, 1369.8 N on its front screw, which reaches 15 mm into the upright. Less "
                        + "than 21 mm is not rated.");
    }

    @Test
    void asksNothingOfSlides() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {}))).isEmpty();
    }

    private static StandDesign filled(double density) {
        return Stands.plain(draft -> {
            draft.hang(new Hang.Runners(new Bar("bar", 30, 20, 700, 2400, Optional.empty())));
            draft.loads = new Loads(density, 195, 750, 150);
        });
    }
}
