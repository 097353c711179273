package org.standwright.design.drawer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Edges;
import org.standwright.design.FrontGrain;
import org.standwright.design.Grip;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Edging;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Rect;
import org.standwright.part.Pocket;

class FrontPanelTest {
    private static final StandDesign PLAIN = Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3))));

    @Test
    void isNotchedInTheMiddleOfItsUpperEdge() {
        var panel = new FrontPanel(notched(100, 25)).drawer(400, 150);

        assertThat(panel.features()).containsExactly(Pocket.through(new Rect(150, 125, 250, 150), 10, "finger notch"));
        assertThat(new FrontPanel(notched(100, 12)).drawer(400, 150).features())
                .containsExactly(Pocket.through(new Rect(150, 138, 250, 150), 6, "finger notch"));
    }

    @Test
    void isNotchedAtTheTopOfADoorToo() {
        assertThat(new FrontPanel(notched(100, 25)).door(400, 600).features())
                .containsExactly(Pocket.through(new Rect(575, 150, 600, 250), 10, "finger notch"));
    }

    @Test
    void standsWithItsGrainUprightLikeADoor() {
        var upright = Draft.of(notched(100, 25), draft -> draft.matched(FrontGrain.UPRIGHT));

        var panel = new FrontPanel(upright).drawer(400, 150);

        assertThat(panel.length()).isEqualTo(150);
        assertThat(panel.features()).containsExactly(Pocket.through(new Rect(125, 150, 150, 250), 10, "finger notch"));
        var level = StandBuilder.build(notched(100, 25)).assembly();
        var stand = StandBuilder.build(upright).assembly();
        Clearances.check(stand);
        for (int i = 0; i < level.parts().size(); i++) {
            assertThat(stand.parts().get(i).box())
                    .isEqualTo(level.parts().get(i).box());
        }
    }

    @Test
    void refusesANotchThatCannotBeCutAndNamesOneThatCan() {
        // three fronts on a plan of 720: 717 wide, 193.666 high
        refused(notched(680, 25), "/drawers/grip/width", "Make the notch 606 mm wide.");
        StandBuilder.build(notched(606, 25));
        refused(notched(100, 120), "/drawers/grip/depth", "mm deep.");
        StandBuilder.build(notched(100, 90));
    }

    @Test
    void isCutSmallerByItsBandsOnAllFourEdges() {
        var tape = new Edging("birch tape", Edging.Kind.TAPE, 0.5);
        var design = Draft.of(
                PLAIN, draft -> draft.edges = new Edges(Optional.empty(), Optional.of(tape), draft.edges.worktop()));

        var panel = new FrontPanel(design).drawer(400, 150);
        assertThat(panel.length()).isEqualTo(400);
        assertThat(panel.cutLength()).isEqualTo(399);
        assertThat(panel.cutWidth()).isEqualTo(149);
        assertThat(new FrontPanel(design).door(400, 600).cutLength()).isEqualTo(599);
    }

    @Test
    void opensWithTheDrawerWhenNotched() {
        var stand = StandBuilder.build(notched(100, 25));

        Clearances.check(stand.assembly());
        assertThat(stand.assembly().hardware()).noneMatch(line -> line.item().contains("pull"));
    }

    @Test
    void isBoredForABoughtPullAfterItIsSet() {
        var hardware = StandBuilder.build(PLAIN).assembly().hardware();

        assertThat(hardware)
                .filteredOn(line -> line.item().startsWith("pull"))
                .singleElement()
                .satisfies(line -> assertThat(line.count() + " x " + line.item() + ": " + line.use())
                        .isEqualTo("3 x pull 96: drawer fronts, bored 96 mm apart after they are set"));
    }

    private static StandDesign notched(double width, double depth) {
        return Draft.of(PLAIN, draft -> draft.grip(new Grip.Notch(width, depth)));
    }

    private static void refused(StandDesign design, String field, String way) {
        assertThatThrownBy(() -> StandBuilder.build(design))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refusal -> assertThat(refusal.field()).isEqualTo(field))
                .hasMessageContaining(way);
    }
}
