package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.design.StandDesign;

class SlideRoomTest {
    private static final SlideRoom RULE = new SlideRoom();

    @Test
    void acceptsThreeDrawers() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {})))
                .containsExactly(
                        "FINE drawer 1.1: The narrowest drawer is 634 mm wide inside.",
                        "FINE drawer 1.1: The shallowest drawer holds things of 175 mm.",
                        "FINE drawer 1.1: The lowest box is 191 mm high, its slide 45 mm.");
    }

    @Test
    void notesADrawerTooNarrowForAHand() {
        var narrow = Stands.plain(draft -> draft.bays = List.of(bay(140, equal(3)), bay(equal(3))));

        assertThat(Asked.of(RULE, narrow)).contains("NOTE drawer 1.1: The narrowest drawer is 90 mm wide inside.");
    }

    @Test
    void notesShallowDrawersAndOffersFewer() {
        var found = RULE.check(Stands.loaded(shallow())).get(1);
        var fewer = Stands.changed(shallow(), found.remedies().get(0));

        assertThat(Asked.of(RULE, shallow())).contains("NOTE drawer 1.1: The shallowest drawer holds things of 34 mm.");
        assertThat(RULE.check(Stands.loaded(fewer)).get(1).gauge().orElseThrow().figure())
                .isGreaterThan(found.gauge().orElseThrow().figure());
    }

    private static StandDesign shallow() {
        return Stands.plain(draft -> draft.bays = List.of(bay(equal(8))));
    }
}
