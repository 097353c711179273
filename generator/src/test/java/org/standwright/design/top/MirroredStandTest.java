package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.given;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.Bay;
import org.standwright.design.Cutout;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Edges;
import org.standwright.design.Layout;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.kit.Edging;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;

class MirroredStandTest {
    private static final Edging TAPE = new Edging("tape", Edging.Kind.TAPE, 1);

    /** Worktop 10 over at the left and 30 at the right of a carcass 800 wide; cut-outs 130 and 300 from the left. */
    @Test
    void isTheStandWrittenTheOtherWayRound() {
        var written = stand(
                10,
                30,
                TopDesigns.place(90, 120.0, null, 80.0, null),
                List.of(
                        new Cutout.Round("hose", Cutout.In.WORKTOP, 130, 420, 60),
                        new Cutout.Rectangular("cord", Cutout.In.BACK, 300, 200, 80, 40, 5)),
                new Edges.TopEdges(Optional.of(TAPE), Optional.empty(), Optional.of(TAPE), Optional.empty()),
                bay(440, given(110), equal(2)),
                bay(equal(4)));
        var other = stand(
                30,
                10,
                TopDesigns.place(90, null, 120.0, 80.0, null),
                List.of(
                        new Cutout.Round("hose", Cutout.In.WORKTOP, 670, 420, 60),
                        new Cutout.Rectangular("cord", Cutout.In.BACK, 500, 200, 80, 40, 5)),
                new Edges.TopEdges(Optional.of(TAPE), Optional.empty(), Optional.empty(), Optional.of(TAPE)),
                bay(equal(4)),
                bay(440, given(110), equal(2)));

        var mirrored = Draft.of(written, draft -> draft.layout = Layout.MIRRORED);
        var stand = StandBuilder.build(mirrored);
        var expected = StandBuilder.build(other);

        assertThat(stand.assembly()).isEqualTo(expected.assembly());
        assertThat(stand.bays()).isEqualTo(expected.bays());
        assertThat(stand.machine()).isEqualTo(expected.machine());
        assertThat(stand.stack()).isEqualTo(expected.stack());
        assertThat(stand.carcass()).isEqualTo(expected.carcass());
        assertThat(stand.design()).isEqualTo(mirrored);
        Clearances.check(stand.assembly());
    }

    /** The bay that stands at the right is the first one in the file. */
    @Test
    void namesTheFieldAsItIsWritten() {
        var written =
                stand(0, 0, Designs.CENTRED, List.of(), Designs.NO_EDGES.worktop(), bay(equal(2)), bay(equal(30)));

        assertThat(Refusals.of(Draft.of(written, draft -> draft.layout = Layout.MIRRORED))
                        .field())
                .isEqualTo(Refusals.of(written).field());
    }

    private static StandDesign stand(
            double left, double right, Place place, List<Cutout> cutouts, Edges.TopEdges edges, Bay... bays) {
        return TopDesigns.press(draft -> {
            draft.plan(800, 500);
            draft.place = place;
            draft.bays = List.of(bays);
            draft.cutouts = cutouts;
            draft.worktop =
                    new Worktop(Designs.BOARD_18, 2, new Worktop.Overhang(20, 0, left, right), Optional.empty());
            draft.edges = new Edges(Optional.empty(), Optional.empty(), edges);
        });
    }
}
