package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.Presets;
import org.standwright.check.Stands;
import org.standwright.design.stand.StandBuilder;

class BoughtScrewTest {
    @Test
    void findsEveryScrewThatAStandListsByItsLength() {
        var stand = Stands.loaded(Stands.plain(draft -> {})).stand();

        assertThat(BoughtScrew.of(stand))
                .extracting(screw -> screw.length() + " " + screw.use())
                .containsExactly(
                        "40.0 leveler blocks, down through the bottom",
                        "10.0 slides on drawer boxes",
                        "16.0 slides on sides",
                        "45.0 worktop, from inside",
                        "40.0 back, every 150 mm into panel edges (not rated)",
                        "25.0 drawer fronts, from inside the box");
        assertThat(BoughtScrew.length(stand, "worktop")).hasValue(45);
        assertThat(BoughtScrew.length(stand, "nothing")).isEmpty();
    }

    @Test
    void knowsTheWorktopsScrewsOfEveryShippedStand() {
        Presets.stands()
                .map(StandBuilder::build)
                .forEach(stand -> assertThat(BoughtScrew.length(stand, "worktop"))
                        .as(stand.design().name())
                        .isPresent());
    }
}
