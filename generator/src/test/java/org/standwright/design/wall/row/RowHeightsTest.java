package org.standwright.design.wall.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.wall.Refused;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.WallDraft;
import org.standwright.unit.Units;

/** Cleats of 80 mm in 18 mm at 45°, so that rows are 163 mm apart at least; elbow at 1100 mm, eyes at 1600 mm. */
class RowHeightsTest {
    @Test
    void atOneSpacingFromTheLowestUp() {
        assertThat(heights(new Rows.Fixed(600, 2000, 400))).isEqualTo("600 1000 1400 1800");
    }

    @Test
    void evenlyBetweenBothLimits() {
        assertThat(heights(new Rows.Even(600, 2000, 400))).isEqualTo("600 950 1300 1650 2000");
        assertThat(heights(new Rows.Even(600, 2000, 1000))).isEqualTo("600 1300 2000");
        assertThat(heights(new Rows.Even(600, 2000, 5000))).isEqualTo("600 2000");
        assertThat(heights(new Rows.Even(600, 600, 400))).isEqualTo("600");
    }

    @Test
    void evenlyButNotCloserThanAHangerNeeds() {
        // 500 / 3 = 166.7, 500 / 4 = 125: four gaps are too many although about is 163
        assertThat(heights(new Rows.Even(600, 1100, 163))).isEqualTo("600 766.7 933.3 1100");
        // 325 / 2 = 162.5 is as near to 163 as can be, but too close
        assertThat(heights(new Rows.Even(600, 925, 163))).isEqualTo("600 925");
    }

    @Test
    void closerBetweenElbowAndEyes() {
        assertThat(heights(new Rows.Reach(300, 2100, 200, 400))).isEqualTo("300 700 1100 1300 1500 1700 2100");
        assertThat(heights(new Rows.Reach(350, 2100, 200, 400))).isEqualTo("350 750 1150 1350 1550 1750");
    }

    @Test
    void asCloseAsAHangerGetsInBetween() {
        assertThat(heights(new Rows.Densest(600, 1000))).isEqualTo("600 763 926");
    }

    @Test
    void refusesRowsTooCloseForAHanger() {
        var reason =
                "Rows 150 mm apart leave no room for a hanger: a strip of 80 mm, the hanger's short face of 62 mm and"
                        + " 21 mm to lift it take 163 mm. Make it 163 mm or more.";

        Refused.at("/rows/spacing", () -> heights(new Rows.Fixed(600, 2000, 150)))
                .isEqualTo(reason);
        Refused.at("/rows/about", () -> heights(new Rows.Even(600, 2000, 150))).isEqualTo(reason);
        Refused.at("/rows/near", () -> heights(new Rows.Reach(600, 2000, 150, 400)))
                .isEqualTo(reason);
        Refused.at("/rows/far", () -> heights(new Rows.Reach(600, 2000, 400, 150)))
                .isEqualTo(reason);
    }

    @Test
    void roundsTheClosestPitchUpToTheTape() {
        var draft = new WallDraft().unit(Units.INCH).rows(new Rows.Fixed(600, 2000, 150));

        // 163 mm are 6.417 in: 6 7/16 on the tape
        Refused.at("/rows/spacing", () -> RowHeights.of(draft.design())).endsWith(" Make it 6 7/16 in or more.");
    }

    @Test
    void refusesLimitsTheWrongWayRound() {
        Refused.at("/rows/highest", () -> heights(new Rows.Densest(900, 800)))
                .isEqualTo("The highest row at 800 mm is below the lowest at 900 mm, so there is no room for one."
                        + " Make it 900 mm or more.");
    }

    @Test
    void refusesTwoRowsWithoutRoomForAHanger() {
        Refused.at("/rows/highest", () -> heights(new Rows.Even(600, 700, 400)))
                .isEqualTo(
                        "From the lowest row at 600 mm to the highest at 700 mm are 100 mm, but a hanger gets in between"
                                + " two rows only if they are 163 mm apart. Raise the highest row to 763 mm."
                                + " Or make both 600 mm for a single row.");
    }

    @Test
    void refusesARowInTheFloor() {
        Refused.at("/rows/lowest", () -> heights(new Rows.Densest(60, 800)))
                .isEqualTo(
                        "The lowest row at 60 mm would reach into the floor: its strip is 78 mm high below its high edge."
                                + " Make it 78 mm or more.");
    }

    @Test
    void refusesALowestRowUnderTheCeiling() {
        Refused.at("/rows/lowest", () -> heights(new Rows.Densest(2350, 2400)))
                .isEqualTo("Above the lowest row at 2350 mm a hanger needs 85 mm to go in, but no wall is higher than"
                        + " 2400 mm. Lower it to 2315 mm or less.");
    }

    @Test
    void refusesAWallLowerThanAStripWithItsHanger() {
        var draft = new WallDraft()
                .walls(WallDraft.wall("north", 3000, 150))
                .cleat(WallDraft.cleat(80, 45, 2, OptionalDouble.empty()))
                .rows(new Rows.Densest(100, 150));

        Refused.at("/rows/lowest", () -> RowHeights.of(draft.design()))
                .endsWith("Strip and hanger together need a wall 163 mm high or more.");
    }

    private static String heights(Rows rows) {
        return RowText.numbers(RowHeights.of(new WallDraft().rows(rows).design()));
    }
}
