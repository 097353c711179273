package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.Edges;
import org.standwright.design.Worktop;
import org.standwright.design.kit.Edging;
import org.standwright.design.stand.StandBuilder;
import org.standwright.part.Banding;
import org.standwright.part.Bands;

class WorktopMakerTest {
    private static final Optional<Edging> TAPE = Optional.of(new Edging("tape", Edging.Kind.TAPE, 1));
    private static final Optional<Edging> LIPPING = Optional.of(new Edging("ash lipping", Edging.Kind.LIPPING, 6));

    /** Worktop 600 x 520: a lipping in front and tape at both sides leave 598 x 514 to cut. */
    @Test
    void coversTheEdgesOfTheUpperLayer() {
        var stand = StandBuilder.build(TopDesigns.press(draft -> draft.edges = new Edges(
                Optional.empty(), Optional.empty(), new Edges.TopEdges(LIPPING, Optional.empty(), TAPE, TAPE))));
        var upper = Bored.part(stand, "worktop upper layer").part();
        var tape = Optional.of(new Banding("tape", 1));

        assertThat(upper.bands())
                .isEqualTo(new Bands(tape, tape, Optional.of(new Banding("ash lipping", 6)), Optional.empty()));
        assertThat(upper.roughLength()).isEqualTo(598);
        assertThat(upper.roughWidth()).isEqualTo(514);
        assertThat(Bored.part(stand, "worktop lower layer").part().bands()).isEqualTo(Bands.NONE);
    }

    @Test
    void coversTheOnlyLayer() {
        var stand = StandBuilder.build(TopDesigns.press(draft -> {
            draft.worktop = new Worktop(Designs.BOARD_18, 1, new Worktop.Overhang(20, 0, 0, 0), Optional.empty());
            draft.edges = new Edges(
                    Optional.empty(),
                    Optional.empty(),
                    new Edges.TopEdges(Optional.empty(), TAPE, Optional.empty(), Optional.empty()));
        }));

        assertThat(Bored.part(stand, "worktop").part().cutWidth()).isEqualTo(519);
    }

    /** The upper of two bare layers is cut 3 mm over and trimmed flush (common practice, no source). */
    @Test
    void cutsABareUpperLayerOver() {
        var stand = StandBuilder.build(TopDesigns.press(draft -> {}));

        assertThat(Bored.part(stand, "worktop upper layer").part().roughLength())
                .isEqualTo(606);
        assertThat(Bored.part(stand, "worktop lower layer").part().roughLength())
                .isEqualTo(600);
    }
}
