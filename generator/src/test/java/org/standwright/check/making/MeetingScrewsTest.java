package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.LoadedStand;
import org.standwright.check.Stands;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;

class MeetingScrewsTest {
    private static final MeetingScrews RULE = new MeetingScrews();

    @Test
    void findsWoodBetweenAllBoresOfAStand() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {})))
                .containsExactly("FINE left side: The nearest two bores of a part, its 'slide pilot' and 'slide "
                        + "pilot', leave 61.5 mm of wood between them.");
    }

    @Test
    void stopsScrewsThatMeetFromBothFaces() {
        var met = side(
                Hole.blind(Face.BENCH, 300, 200, 3, 10, "slide pilot"),
                Hole.blind(Face.SHOW, 300, 200, 3, 10, "hinge pilot"));

        assertThat(Asked.of(RULE, met))
                .containsExactly("STOP left side: Its bores for 'slide pilot' and 'hinge pilot' meet.");
    }

    @Test
    void stopsTipsThatNearlyMeet() {
        var near = side(
                Hole.blind(Face.BENCH, 300, 200, 3, 8.9, "slide pilot"),
                Hole.blind(Face.SHOW, 300, 200, 3, 8.8, "hinge pilot"));

        assertThat(Asked.of(RULE, near))
                .containsExactly("STOP left side: The nearest two bores of a part, its 'slide pilot' and 'hinge "
                        + "pilot', leave 0.3 mm of wood between them.");
        assertThat(Asked.limit(RULE, near)).isEqualTo("at least 0.5 mm");
    }

    @Test
    void stopsABoreInAnEdgeThatCrossesOneInAFace() {
        var crossed =
                side(Hole.through(300, 20, 4.5, "joint screw"), new EdgeHole(Edge.Y0, 302, 9, 5, 40, "connector"));

        assertThat(Asked.of(RULE, crossed))
                .containsExactly("STOP left side: Its bores for 'joint screw' and 'connector' meet.");
    }

    @Test
    void takesARecessAndItsHoleAsOne() {
        var bolt = side(Hole.through(300, 200, 9, "bolt"), Hole.blind(Face.SHOW, 300, 200, 25, 6, "recess"));

        assertThat(Asked.of(RULE, bolt)).allMatch(words -> words.startsWith("FINE"));
    }

    /** By Pythagoras: 3 mm and 4 mm apart square to each other is 5. */
    @Test
    void measuresTheWoodBetweenBores() {
        assertThat(wood(Hole.through(100, 50, 2, "a"), Hole.through(103, 54, 2, "b")))
                .isCloseTo(3, within(1e-9));
        assertThat(wood(Hole.blind(Face.BENCH, 100, 50, 2, 5, "a"), Hole.blind(Face.SHOW, 105, 50, 2, 9, "b")))
                .isCloseTo(5, within(1e-9));
        assertThat(wood(Hole.through(100, 50, 4, "a"), new EdgeHole(Edge.Y0, 110, 9, 6, 30, "b")))
                .isCloseTo(StrictMath.hypot(5, 18), within(1e-9));
        assertThat(wood(new EdgeHole(Edge.Y0, 60, 9, 6, 30, "a"), new EdgeHole(Edge.X0, 34, 9, 4, 55, "b")))
                .isCloseTo(StrictMath.hypot(2, 2), within(1e-9));
        assertThat(wood(Hole.through(100, 20, 4, "a"), new EdgeHole(Edge.Y0, 102, 9, 6, 30, "b")))
                .isNegative();
    }

    private static double wood(Feature one, Feature other) {
        var board = Part.blank("board", new Material("board 18", 18, 680, Grain.ALONG_LENGTH), 400, 200)
                .with(one, other);
        var bores = Bore.of(board);
        assertThat(bores.get(1).wood(bores.get(0))).isEqualTo(bores.get(0).wood(bores.get(1)));
        return bores.get(0).wood(bores.get(1));
    }

    private static LoadedStand side(Feature... features) {
        return Altered.part(Stands.plain(draft -> {}), "left side", part -> part.with(List.of(features)));
    }
}
