package org.standwright.design.carcass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.Designs.BOARD_12;
import static org.standwright.design.Designs.BOARD_18;
import static org.standwright.design.Designs.BOARD_6;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.planerStand;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Bay;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Cutout;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Joint;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.part.SheetGood;

/** A back in two pieces that meet on a partition: as wide together as a whole one, each on half of its edge. */
class BackInTwoTest {
    @Test
    void meetsOnTheMiddleOfThePartition() {
        // sides of 18 housed 6 deep: from 12 to 708; the partition from 18 + 400 to 436
        assertThat(backs(StandBuilder.build(inTwo(BOARD_18))))
                .containsExactly("back left x 12.0 to 427.0", "back right x 427.0 to 708.0");
    }

    @Test
    void isAsWideTogetherAsAWholeOne() {
        assertThat(backs(StandBuilder.build(planerStand()))).containsExactly("back x 12.0 to 708.0");
    }

    @Test
    void coversTheSidesOfAButtedCarcass() {
        assertThat(backs(StandBuilder.build(inTwo(BOARD_18, new Joint.Screwed()))))
                .containsExactly("back left x 0.0 to 427.0", "back right x 427.0 to 720.0");
    }

    @Test
    void takesThePartitionNearestTheMiddle() {
        var three = List.of(bay(120, fill(80)), bay(300, fill(80)), bay(fill(80)));
        // middles at 18 + 120 + 9 = 147 and 147 + 300 + 18 = 465; the carcass's is at 360
        var stand = StandBuilder.build(Draft.of(inTwo(BOARD_18), draft -> draft.bays = new ArrayList<Bay>(three)));

        assertThat(backs(stand).get(0)).isEqualTo("back left x 12.0 to 465.0");
    }

    @Test
    void isScrewedOnBothSidesOfTheJoint() {
        assertThat(backScrews(StandBuilder.build(inTwo(BOARD_18))))
                .isGreaterThan(backScrews(StandBuilder.build(planerStand())));
    }

    @Test
    void needsAPartition() {
        var one = Draft.of(inTwo(BOARD_18), draft -> draft.bays = List.of(bay(fill(80))));

        assertThatThrownBy(() -> StandBuilder.build(one))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessage("Two pieces of a back meet on a partition between bays, but this carcass has one bay. "
                        + "Make it 1: the back in one piece.");
    }

    @Test
    void needsAnEdgeThatCarriesBoth() {
        assertThatThrownBy(() -> StandBuilder.build(inTwo(BOARD_12)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageStartingWith("Two pieces of a back meet on a partition between bays, and each lies on half "
                        + "of its edge, 7 mm or more; it is 12 mm thick.");
    }

    @Test
    void keepsCutOutsClearOfTheJoint() {
        var cut = Draft.of(
                inTwo(BOARD_18),
                draft -> draft.cutouts = List.of(new Cutout.Round("cord", Cutout.In.BACK, 427 + 44, 300, 50)));

        assertThatThrownBy(() -> StandBuilder.build(cut))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("meets the joint of the back");
    }

    private static StandDesign inTwo(SheetGood carcass) {
        return inTwo(carcass, new Joint.Housed());
    }

    private static StandDesign inTwo(SheetGood carcass, Joint joint) {
        return Draft.of(
                planerStand(),
                draft ->
                        draft.carcass = new CarcassPlan(carcass, BOARD_6, carcass == BOARD_18 ? 6 : 4, 0.15, joint, 2));
    }

    private static List<String> backs(Stand stand) {
        return stand.assembly().parts().stream()
                .filter(part -> part.part().name().equals("back"))
                .map(BackInTwoTest::line)
                .toList();
    }

    private static String line(PlacedPart part) {
        return String.format(
                Locale.ROOT,
                "%s x %.1f to %.1f",
                part.label(),
                part.box().min().x(),
                part.box().max().x());
    }

    private static int backScrews(Stand stand) {
        return stand.assembly().hardware().stream()
                .filter(item -> item.use().startsWith("back"))
                .mapToInt(item -> item.count())
                .sum();
    }
}
