package org.standwright.design.wall.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Screw;
import org.standwright.design.wall.Fixing;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Refused;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.WallDraft;
import org.standwright.design.wall.built.Screwing;
import org.standwright.part.Recess;
import org.standwright.unit.Units;

/** Strips of 18 mm over 12.5 mm of covering; 5 mm screws hold from 30 mm, cables may lie from 32 mm on. */
class ScrewingTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void theLongestThatCannotReachACable() {
        // 6 x 4.826 = 28.96: 60 goes 29.5 into the stud and holds, 62 is 31.5, 63 is 32.5
        assertThat(of(fixing(NONE, 1, NONE, 50.0, 60.0, 61.0, 62.0, 63.0)).length())
                .isEqualTo(62);
    }

    @Test
    void theShortestThatHoldsWhereNoneIsBothLongAndShortEnough() {
        assertThat(of(fixing(NONE, 1, NONE, 50.0, 59.0, 70.0, 80.0)).length()).isEqualTo(70);
    }

    @Test
    void asLongAsItsMakerSays() {
        assertThat(of(fixing(OptionalDouble.of(55), 1, NONE, 62.0)).length()).isEqualTo(55);
    }

    @Test
    void aSunkenWasherLetsAScrewInDeeper() {
        var sunk = of(fixing(NONE, 1, OptionalDouble.of(14), 56.0, 57.0, 58.0));

        assertThat(sunk.length()).isEqualTo(57);
        assertThat(sunk.into(WallDraft.spaced(400, 0))).isEqualTo(57 - 13 - 12.5);
        assertThat(sunk.recess()).isEqualTo(new Recess.Counterbore(14, 5));
    }

    @Test
    void refusesScrewsOfWhichNoneHolds() {
        Refused.at("/fixing/screw", () -> of(fixing(NONE, 1, NONE, 40.0, 50.0)))
                .isEqualTo(
                        "Through strip and covering and far enough into what holds it (6 diameters into a stud, through"
                                + " an anchor and a diameter beyond), screw must be 60 mm long, but it is sold in"
                                + " 40 mm, 50 mm. Use a screw 60 mm long or more.");
    }

    /** 18 + 12.5 + 40 + 5 = 75.5: through the anchor and a diameter beyond. */
    @Test
    void reachesThroughAnAnchorInMasonry() {
        var draft = new WallDraft().fixing(fixing(NONE, 1, NONE, 60.0, 70.0, 80.0, 100.0));
        draft.walls = List.of(new Wall(
                "north",
                OptionalDouble.of(3000),
                OptionalDouble.of(2400),
                List.of(),
                new Framing.Masonry(12.5, OptionalDouble.of(400), 200, List.of(), "nylon anchor", 8, 40),
                List.of()));

        assertThat(StripScrews.of(draft.design()).length()).isEqualTo(80);
    }

    @Test
    void oneInTheMiddleOfTheShortFaceOrTwoAtItsQuarters() {
        // the short face is 80 - 18 = 62
        assertThat(RowText.numbers(of(fixing(NONE, 1, NONE, 62.0)).heights())).isEqualTo("31");
        // 62 / 4 = 15.5 is nearer to the edge than 4 diameters
        assertThat(RowText.numbers(of(fixing(NONE, 2, NONE, 62.0)).heights())).isEqualTo("20 46.5");
    }

    @Test
    void headsOfMetricScrewsAndInchOnesAreCutAtTheirAngles() {
        assertThat(of(fixing(NONE, 1, NONE, 62.0)).recess()).isEqualTo(new Recess.Countersink(10, 90));
        assertThat(StripScrews.of(new WallDraft().unit(Units.INCH).design()).recess())
                .isEqualTo(new Recess.Countersink(10, 82));
    }

    @Test
    void refusesAWasherThatMeetsTheNextOne() {
        Refused.at("/fixing/washer", () -> of(fixing(NONE, 2, OptionalDouble.of(30), 62.0)))
                .isEqualTo("A head 30 mm wide has only 26.5 mm on a strip 78 mm high with 2 screws at each stud."
                        + " Use a head of 26 mm at most, or one screw at each stud.");
    }

    @Test
    void refusesAWasherThatSlipsThroughTheBore() {
        Refused.at("/fixing/washer", () -> of(fixing(NONE, 1, OptionalDouble.of(5), 62.0)))
                .isEqualTo("A head 5 mm wide slips through its bore of 5.5 mm. Use one that is wider than the bore.");
    }

    private static Screwing of(Fixing fixing) {
        return StripScrews.of(new WallDraft().fixing(fixing).design());
    }

    private static Fixing fixing(OptionalDouble length, int perStud, OptionalDouble washer, Double... sold) {
        return new Fixing(new Screw("screw", 5, 3, 5.5, List.of(sold)), length, perStud, washer);
    }
}
