package org.standwright.packet.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutLine;
import org.standwright.design.Designs;
import org.standwright.part.Part;

class MemberNamesTest {
    private static String named(String... members) {
        var part = Part.blank("part", Designs.BOARD_18.material(), 100, 50);
        return MemberNames.of(new CutLine("A", part, List.of(members), List.of()));
    }

    @Test
    void drawsRunsOfDrawersTogetherBayByBay() {
        assertThat(named(
                        "drawer 1.4 front",
                        "drawer 2.1 front",
                        "drawer 2.2 front",
                        "drawer 2.3 front",
                        "drawer 3.1 front",
                        "drawer 3.2 front"))
                .isEqualTo("drawer 1.4, 2.1 to 2.3, 3.1, 3.2 front");
    }

    @Test
    void knowsBaysWithinBays() {
        assertThat(named("drawer 2a.1 front", "drawer 2a.2 front", "drawer 2a.3 front", "drawer 2b.1 front"))
                .isEqualTo("drawer 2a.1 to 2a.3, 2b.1 front");
        assertThat(named("door 1.2", "door 2a.1", "door 2a.2")).isEqualTo("door 1.2, 2a.1, 2a.2");
    }

    @Test
    void keepsBoxFrontsAndBacksApart() {
        assertThat(named("drawer 1.1 box front", "drawer 1.1 box back", "drawer 1.2 box front", "drawer 1.2 box back"))
                .isEqualTo("drawer 1.1, 1.2 box front, drawer 1.1, 1.2 box back");
    }

    @Test
    void leavesNamesWithoutNumbersAsTheyAre() {
        assertThat(named("left side", "right side")).isEqualTo("left side, right side");
        assertThat(named("plinth rail 1", "plinth rail 2", "plinth rail 3")).isEqualTo("plinth rail 1 to 3");
    }
}
