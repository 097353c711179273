package org.standwright.design.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;
import static org.standwright.design.column.Mixed.clear;
import static org.standwright.design.column.Mixed.divided;
import static org.standwright.design.column.Mixed.door;
import static org.standwright.design.column.Mixed.graduated;
import static org.standwright.design.column.Mixed.open;
import static org.standwright.design.column.Mixed.stand;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Hung;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;

/** Heights in one bay whose opening is 557 mm high, panels 18 mm, gap 3 mm: sums that a reader can do. */
class ColumnTest {
    private static final double OPENING = 557;

    /** Zone 700, gap 3, no gap at the ends (references: own derivation, checked by adding them up). */
    @ParameterizedTest
    @CsvSource({"3, 694", "4, 691", "5, 688"})
    void leavesFrontsTheZoneLessItsGaps(int fronts, double room) {
        assertThat(FrontReach.room(700, fronts, 0, 3)).isEqualTo(room);
    }

    @Test
    void keepsBaysOfDrawersOnlyFromEndToEndOfTheCarcass() {
        // carcass 593: 593 - 2 x 3 - 2 x 3 = 581 for three fronts
        assertThat(heights(Mount.OVERLAY, bay(equal(3)))).isEqualTo("557.00: 193.67 193.67 193.67");
        // opening 557: 557 - 12 = 545
        assertThat(heights(Mount.INSET, bay(equal(3)))).isEqualTo("557.00: 181.67 181.67 181.67");
    }

    /**
     * Overlay: drawers reach 18 over the sub-top and 9 over the divider, with a gap of 3 above and 1.5 below: two equal
     * fronts a with a gap of 3 stand in o + 27, so o = 2a + 7.5 - 27; then 2a - 19.5 + 18 + a = 557.
     */
    @Test
    void givesOpenSpaceTheShareOfOneDrawer() {
        double share = (557 - 18 + 19.5) / 3;
        assertThat(heights(Mount.OVERLAY, bay(equal(2), open())))
                .isEqualTo(String.format(Locale.ROOT, "%.2f: %.2f %.2f|%.2f", 2 * share - 19.5, share, share, share));
        // inset: o = 2a + 9, so 3a + 9 + 18 = 557
        assertThat(heights(Mount.INSET, bay(equal(2), open()))).isEqualTo("362.33: 176.67 176.67|176.67");
    }

    @Test
    void keepsGivenHeightsAndSharesTheRest() {
        // inset: opening of the drawer 100 + 6, of the door 200 + 6, clear 557 - 36 - 312 = 209
        assertThat(heights(Mount.INSET, bay(given(100), door(200, Hung.LEFT), clear())))
                .isEqualTo("106.00: 100.00|206.00: 200.00|209.00");
    }

    /** Front i = unit x ratio^i: with 1 + 1.5 + 2.25 shares of 557 - 12 = 545 (own derivation). */
    @Test
    void growsGraduatedFrontsDownwardsByTheirRatio() {
        assertThat(heights(Mount.INSET, bay(graduated(3, 1.5)))).isEqualTo("557.00: 114.74 172.11 258.16");
    }

    @Test
    void roundsDownAndLeavesTheRestToTheLowest() {
        var five = Mixed.rounded(stand(Mount.INSET, bay(equal(3))), OptionalDouble.of(5));
        assertThat(heights(five)).isEqualTo("557.00: 180.00 180.00 185.00");
        var tape = Mixed.rounded(stand(Mount.INSET, bay(equal(3))), OptionalDouble.empty());
        assertThat(heights(tape)).isEqualTo("557.00: 181.00 181.00 183.00");
        // the divider's 18 and the drawers' 9 leave 530 for three: 176.67; what is open below takes the 2
        var mixed = Mixed.rounded(stand(Mount.INSET, bay(equal(2), open())), OptionalDouble.empty());
        assertThat(heights(mixed)).isEqualTo("361.00: 176.00 176.00|178.00");
    }

    @Test
    void sharesAgainWhatAMostOrALeastLeaves() {
        // 545 for three: 100 at most for one of them, 222.5 for the others
        var most = new Content.EqualDrawers(1, OptionalDouble.empty(), OptionalDouble.of(100));
        assertThat(heights(Mount.INSET, bay(most, equal(2)))).isEqualTo("557.00: 100.00 222.50 222.50");
        var least = new Content.EqualDrawers(1, OptionalDouble.of(305), OptionalDouble.empty());
        assertThat(heights(Mount.INSET, bay(least, equal(2)))).isEqualTo("557.00: 305.00 120.00 120.00");
        // graduated 1 : 2 : 4 of 545 is 77.9, 155.7, 311.4; held at 200 it leaves 345 in 1 : 2
        var held = new Content.GraduatedDrawers(3, 2, OptionalDouble.empty(), OptionalDouble.of(200));
        assertThat(heights(Mount.INSET, bay(held))).isEqualTo("557.00: 145.00 200.00 200.00");
    }

    @Test
    void refusesWhatIsHeldEverywhereAndDoesNotClose() {
        var most = new Content.EqualDrawers(3, OptionalDouble.empty(), OptionalDouble.of(100));

        assertThatThrownBy(() -> heights(Mount.INSET, bay(most)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessage(
                        "In bay 1 the heights with the gaps and panels between them add up to an opening of 312 mm, "
                                + "but the one to fill is 557 mm. Allow those fronts 182 mm. Or leave \"most\" out: those fronts then take what is left. "
                                + "Or make the working height 655 mm.");
    }

    @Test
    void fillsBesideFixedHeightsOnly() {
        // inset: 557 - 18 - 150 = 389; fronts of 80 with gaps of 3 above, between and below: four, the lowest 134
        assertThat(heights(Mount.INSET, bay(open(150), fill(80)))).isEqualTo("150.00|389.00: 80.00 80.00 80.00 134.00");
        assertThatThrownBy(() -> heights(Mount.INSET, bay(open(), fill(80))))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("more than one of its contents wants the height that is left");
    }

    @Test
    void makesADividedPartAsHighAsTheTallestOfItsBaysNeeds() {
        // cells of 62 with gaps of 3 take three inset drawers 198; as a third of the bay it has more
        var column = new Column(
                stand(Mount.INSET, bay(open())), BayPlace.of(0), bay(divided(bay(equal(3)), bay(open()))), walls());
        assertThat(column.least()).isEqualTo(3 * 62 + 4 * 3);
    }

    @Test
    void givesADividedPartTheHeightThatItsGivenFrontsAddUpTo() {
        assertThat(heights(Mount.INSET, bay(open(), divided(bay(given(100.0, 120.0)), bay(clear())))))
                .isEqualTo("310.00|229.00");
    }

    private static Walls walls() {
        return Walls.ofBay(0, 1);
    }

    private static String heights(Mount mount, Bay bay) {
        return heights(stand(mount, bay));
    }

    /** Each opening, and its fronts behind a colon. */
    private static String heights(StandDesign design) {
        return Column.ofBay(design, 0).shares(OPENING).stream()
                .map(share -> String.format(Locale.ROOT, "%.2f", share.height())
                        + (share.fronts().isEmpty()
                                ? ""
                                : share.fronts().stream()
                                        .map(front -> String.format(Locale.ROOT, " %.2f", front))
                                        .collect(Collectors.joining("", ":", ""))))
                .collect(Collectors.joining("|"));
    }
}
