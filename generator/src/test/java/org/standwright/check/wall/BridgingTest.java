package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.check.wall.Hung.only;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standwright.check.Severity;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Interval;

/** A holder 500 mm wide from 650 mm on, before two strips with a gap from 914.4 to 1117.6 mm. */
class BridgingTest {
    private static final Interval GAP = new Interval(914.4, 1117.6);

    private static HungWall bridged(boolean lock) {
        var wall = new Hung();
        wall.width = 2000;
        wall.framing = Hung.studs(406.4, 812.8, 1219.2, 1625.6);
        wall.holders = List.of(Hung.panel("unit", 10, 500, lock, Optional.of(new Spot("north", 1, 650))));
        return cut(wall.hung());
    }

    private static HungWall cut(HungWall whole) {
        var built = whole.wall();
        var old = built.wall(1);
        var rows = old.rows().stream()
                .map(row -> new Row(
                        row.number(),
                        row.height(),
                        row.strips().stream().flatMap(BridgingTest::cut).toList()))
                .toList();
        var wall = new CleatedWall(
                old.number(),
                old.wall(),
                old.outline(),
                old.frame(),
                old.zones(),
                old.bare(),
                old.studs(),
                rows,
                old.shortRuns(),
                old.notes());
        return new HungWall(
                new CleatWall(
                        built.design(),
                        built.screwing(),
                        List.of(wall),
                        built.holders(),
                        built.unplaced(),
                        built.assembly()),
                whole.loads());
    }

    private static Stream<Strip> cut(Strip whole) {
        return Stream.of(
                part(whole, "left", new Interval(whole.along().from(), GAP.from())),
                part(whole, "right", new Interval(GAP.to(), whole.along().to())));
    }

    private static Strip part(Strip whole, String label, Interval along) {
        return new Strip(
                label,
                whole.row(),
                along,
                whole.top(),
                whole.studs().stream().filter(along::holds).toList(),
                whole.screws());
    }

    /** 30 mm on one, 300 mm of gap, 330 mm on the other: 8 % by length, (495 - 330) / (495 - 15) by levers. */
    @Test
    void givesTheShorterContactWhatBalancesTheMoment() {
        var contacts = List.of(new Interval(0, 30), new Interval(330, 660));

        var shares = new BridgeShares(contacts, new Interval(0, 660), 330).all();

        assertThat(shares.get(0)).isCloseTo(165.0 / 480, within(1e-9));
        assertThat(shares.get(1)).isCloseTo(330.0 / 360, within(1e-9));
    }

    @Test
    void givesAllToTheOnlyStripAndToTheLastBeyondWhichItHangs() {
        var left = new Interval(0, 100);
        var right = new Interval(200, 300);

        assertThat(new BridgeShares(List.of(left), new Interval(20, 120), 70).all())
                .containsExactly(1.0);
        assertThat(new BridgeShares(List.of(left, right), new Interval(0, 80), 40).all())
                .containsExactly(1.0, 0.0);
    }

    /** Of three the outer one, away from the centre of mass, gets its part of the length. */
    @Test
    void sharesOfThreeByLeversOnlyBesideTheCentre() {
        var contacts = List.of(new Interval(0, 100), new Interval(200, 300), new Interval(400, 500));

        var shares = new BridgeShares(contacts, new Interval(0, 500), 300).all();

        assertThat(shares.get(0)).isCloseTo(1 / 3.0, within(1e-9));
        assertThat(shares.get(1)).isCloseTo(0.75, within(1e-9));
        assertThat(shares.get(2)).isCloseTo(1 / 3.0, within(1e-9));
    }

    /** Contacts to 914.4 and from 1117.6, their middles 782.2 and 1133.8, the centre at 900. */
    @Test
    void loadsBothStripsOfAHolderThatBridgesThem() {
        var wall = bridged(false);

        var held = HeldBy.of(wall, HungBody.all(wall).get(0));

        assertThat(held).extracting(piece -> piece.strip().label()).containsExactly("left", "right");
        assertThat(held.get(0).share()).isCloseTo(264.4 / 296.8, within(1e-6));
        assertThat(held.get(1).share()).isCloseTo((900 - 782.2) / (1133.8 - 782.2), within(1e-6));
    }

    @Test
    void countsOnlyHangerScrewsOverAStrip() {
        var wall = bridged(false);
        var holder = wall.loads().get(0).holder();
        int count = new HolderScrews(wall, holder).overStrips();

        assertThat(count).isBetween(1, holder.made().hangerScrews() - 1);
        assertThat(only(new HangerScrews(), wall).message())
                .startsWith("Each of the " + count + " of its ")
                .contains("lie over a strip");
    }

    /** A quarter of 500 mm from each end: at 775 mm, and at 1025 mm over the gap. */
    @Test
    void saysWhenALockScrewMeetsNoStrip() {
        var wall = bridged(true);

        assertThat(new HolderScrews(wall, wall.loads().get(0).holder()).locking())
                .isEqualTo(1);
        var finding = only(new HangKnock(), wall);
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.message()).contains("One of its lock screws meets no strip");
    }
}
