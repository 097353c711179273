package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.LoadedStand;
import org.standwright.check.Stands;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;

class EdgePlyTest {
    private static final EdgePly RULE = new EdgePly();

    /** A board of 18 mm: the middle third lies between 6 and 12 mm. */
    @ParameterizedTest
    @CsvSource({"6, FINE, 3 mm", "12, FINE, 3 mm", "5.5, CAUTION, 3.5 mm", "15, CAUTION, 6 mm"})
    void keepsBoresInTheMiddleThird(double z, String severity, String off) {
        assertThat(Asked.of(RULE, side(z)))
                .containsExactly(severity + " left side: Of all bores in edges its 'hook pilot' lies farthest from the "
                        + "middle of the edge: " + off + ".");
    }

    @Test
    void asksNothingWhereNoEdgeIsBored() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {}))).isEmpty();
    }

    private static LoadedStand side(double z) {
        return Altered.part(
                Stands.plain(draft -> {}),
                "left side",
                part -> part.with(new EdgeHole(Edge.Y0, 300, z, 5, 30, "hook pilot")));
    }
}
