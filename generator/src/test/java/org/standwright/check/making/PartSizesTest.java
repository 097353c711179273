package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Trim;

class PartSizesTest {
    private static final SmallParts SMALL = new SmallParts();
    private static final LargeParts LARGE = new LargeParts();

    @Test
    void acceptsPartsThatKeepHandsAway() {
        assertThat(Asked.of(SMALL, Stands.plain(draft -> {})))
                .containsExactly(
                        "FINE left leveler block lower: The narrowest part is 80 mm wide.",
                        "FINE drawer 1.1 left side: The shortest part is 500 mm long.");
    }

    @Test
    void notesNarrowAndShortParts() {
        var small = Stands.plain(draft -> draft.bays = List.of(bay(200, equal(8)), bay(equal(3))));

        assertThat(Asked.of(SMALL, small))
                .containsExactly(
                        "NOTE drawer 1.1 left side: The narrowest part is 50 mm wide, one of 8 below the "
                                + "limit. Use a push stick, or rip it from a wider blank.",
                        "NOTE drawer 1.1 box front: The shortest part is 162 mm long, one of 24 below the "
                                + "limit. Cut it on a sled, or several as one blank and apart last.");
    }

    @Test
    void takesTheSawsOwnSmallestPiece() {
        var saw = saw(OptionalDouble.empty(), 700, Optional.empty());

        assertThat(Asked.of(SMALL, saw))
                .last()
                .isEqualTo("NOTE drawer 1.1 left side: The shortest part is 500 mm long, one of 24 below the "
                        + "limit. Cut it on a sled, or several as one blank and apart last.");
    }

    @Test
    void stopsAPartThatTheSawCannotRip() {
        assertThat(Asked.of(LARGE, saw(OptionalDouble.of(700), 0, Optional.empty())))
                .first()
                .isEqualTo("STOP worktop upper layer: The longest rip of a part is 726 mm.");
    }

    @Test
    void leavesLongPartsToAHandHeldSaw() {
        var saw = saw(OptionalDouble.of(700), 0, Optional.of(new BreakDown(2, 5)));

        assertThat(Asked.of(LARGE, saw)).isEmpty();
    }

    private static StandDesign saw(OptionalDouble longestRip, double smallest, Optional<BreakDown> hand) {
        return Stands.plain(draft -> draft.saw = new Saw(
                3.2,
                Trim.all(5),
                OptionalInt.empty(),
                Saw.First.EITHER,
                longestRip,
                OptionalDouble.empty(),
                smallest,
                hand));
    }
}
