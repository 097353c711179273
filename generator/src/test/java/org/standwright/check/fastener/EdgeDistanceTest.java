package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;

class EdgeDistanceTest {
    private static final EdgeDistance RULE = new EdgeDistance();

    @Test
    void acceptsTheScrewsOfAStand() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {})))
                .containsExactly("FINE drawer 1.1 left side: Nearest to an edge is its hole for 'slide pilot': 23 mm "
                        + "from it to the middle of a screw of 4 mm.");
    }

    /** The screws of these stands are 4 mm thick, their pilots 2.5. */
    @Test
    void warnsOfAScrewNearAnEdge() {
        var near = Altered.part(
                Stands.plain(draft -> {}),
                "left side",
                part -> part.with(Hole.blind(Face.BENCH, 300, 11, 2.5, 10, "hook pilot")));

        assertThat(Asked.of(RULE, near))
                .containsExactly("CAUTION left side: Nearest to an edge is its hole for 'hook pilot': 11 mm from it "
                        + "to the middle of a screw of 4 mm.");
        assertThat(Asked.limit(RULE, near)).isEqualTo("at least 12 mm");
    }

    @Test
    void leavesAHingesScrewsWhereTheHingeHasThem() {
        var hinged = Altered.part(
                Stands.plain(draft -> {}),
                "left side",
                part -> part.with(Hole.blind(Face.BENCH, 300, 8, 2.5, 10, "hinge pilot")));

        assertThat(Asked.of(RULE, hinged)).singleElement().asString().startsWith("FINE drawer 1.1 left side");
    }

    @Test
    void warnsOfAScrewInAnEdgeNearItsEnd() {
        var near = Altered.part(
                Stands.plain(draft -> {}),
                "left side",
                part -> part.with(new EdgeHole(Edge.Y0, 8, 9, 2.5, 20, "hook pilot")));

        assertThat(Asked.of(RULE, near))
                .containsExactly("CAUTION left side: Nearest to an edge is its hole for 'hook pilot': 8 mm from it to "
                        + "the middle of a screw of 4 mm.");
    }
}
