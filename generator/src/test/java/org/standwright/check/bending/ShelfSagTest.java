package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.standwright.check.bending.Asked.about;
import static org.standwright.check.bending.Asked.cured;
import static org.standwright.check.bending.Asked.figure;
import static org.standwright.check.bending.Asked.severity;
import static org.standwright.design.Designs.BOARD_18;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Content;
import org.standwright.design.Draft;
import org.standwright.design.Edges;
import org.standwright.design.Joint;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.Support;
import org.standwright.design.kit.Edging;
import org.standwright.part.Board;
import org.standwright.part.SheetGood;

class ShelfSagTest {
    private static final ShelfSag RULE = new ShelfSag();
    private static final Support PLINTH = new Support.Plinth(80, 60, 5);

    /** 5 W L³ / (384 E I), any table of beams: 684 long, 554 deep, 195 kg/m² and 12.24 kg/m² of board; 1.8 for plywood. */
    @Test
    void loadsAFixedShelfAlongItsWholeSpan() {
        double load = (Math.min(90.7, 195 * 0.684 * 0.554) + 680 * 0.018 * 0.684 * 0.554) * 9.80665;
        double stiffness = 6500.0 * 554 * 18 * 18 * 18 / 12;
        double sag = 1.8 * 5 * load * Math.pow(684, 3) / (384 * stiffness);

        var finding = about("shelf 1.1", RULE, shelves(Shelves.Kind.FIXED, 720, BOARD_18));

        assertThat(figure(finding)).isCloseTo(sag, withPercentage(1e-6));
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
    }

    /** Spans of 564, 684 and 824 mm; up to 90.7 kg the sag grows as the fourth power of the span, its limit as the first. */
    @ParameterizedTest
    @EnumSource(Shelves.Kind.class)
    void cautionsAndStopsByTheShareOfTheSpan(Shelves.Kind kind) {
        assertThat(severity("shelf 1.1", RULE, shelves(kind, 600, BOARD_18))).isEqualTo(Severity.FINE);
        assertThat(severity("shelf 1.1", RULE, shelves(kind, 720, BOARD_18))).isEqualTo(Severity.CAUTION);
        assertThat(severity("shelf 1.1", RULE, shelves(kind, 860, BOARD_18))).isEqualTo(Severity.STOP);
        assertThat(severity("shelf 1.1", RULE, shelves(kind, 600, mdf()))).isEqualTo(Severity.STOP);
    }

    /** Half of 50 kg evenly over each of two bays of 333 mm: 5 W L³ / (384 E I), any table of beams. */
    @Test
    void hangsBallastUnderAPartitionOnBothSidesOfIt() {
        var light = Stands.plain(draft -> {
            draft.support = PLINTH;
            draft.bays = List.of(bay(equal(3)), bay(equal(3)));
        });
        var loaded = Draft.of(light, draft -> draft.steady = new Steady(50, false, draft.steady.anchor()));
        double stiffness = 6500.0 * 554 * 18 * 18 * 18 / 12;
        double more = 1.8 * 5 * 25 * 9.80665 * Math.pow(333, 3) / (384 * stiffness);

        for (var bottom : List.of("bottom of bay 1", "bottom of bay 2")) {
            assertThat(figure(about(bottom, RULE, loaded)) - figure(about(bottom, RULE, light)))
                    .isCloseTo(more, withPercentage(0.1));
        }
    }

    /** Halves of 403 mm of MDF under 46 kg sag 2.1 mm, more than 403 / 240; boards of 21 mm (18 / 21)³ of it. */
    @Test
    void offersTwoChangesAtOnceWhereOneIsNotEnough() {
        var wide = shelves(Shelves.Kind.FIXED, 860, mdf());
        var finding = about("shelf 1.1", RULE, wide);

        assertThat(finding.remedies()).hasSize(3);
        assertThat(severity("shelf 1.1", RULE, cured("two halves", finding, wide)))
                .isEqualTo(Severity.CAUTION);
        assertThat(severity("shelf 1.1", RULE, cured("thick", finding, wide))).isEqualTo(Severity.STOP);
        assertThat(severity("shelf 1.1", RULE, cured("thick, and bay 1", finding, wide)))
                .isEqualTo(Severity.FINE);
    }

    @Test
    void offersNarrowerBaysAndThickerBoards() {
        var wide = shelves(Shelves.Kind.FIXED, 600, mdf());
        var finding = about("shelf 1.1", RULE, wide);

        var halved = cured("two halves", finding, wide);
        var thicker = cured("carcass", finding, wide);

        assertThat(severity("shelf 1.1", RULE, halved)).isEqualTo(Severity.FINE);
        assertThat(severity("shelf 2.1", RULE, halved)).isEqualTo(Severity.FINE);
        assertThat(figure(about("shelf 1.1", RULE, thicker))).isLessThan(figure(finding));
    }

    /** (E 534 + 5500 x 20) against E 554: the strip of solid wood on the front of an MDF shelf. */
    @Test
    void countsAGluedLippingButNoTape() {
        var bare = shelves(Shelves.Kind.FIXED, 720, mdf());
        double bareSag = figure(about("shelf 1.1", RULE, bare));
        double lipped = figure(about("shelf 1.1", RULE, edged(bare, Edging.Kind.LIPPING)));

        assertThat(bareSag / lipped).isCloseTo((2200 * 534 + 5500 * 20.0) / (2200 * 554), withPercentage(0.01));
        assertThat(figure(about("shelf 1.1", RULE, edged(bare, Edging.Kind.TAPE))))
                .isGreaterThan(bareSag);
    }

    @Test
    void loadsTheBottomOfAnOpenBayOnAPlinthButNotThatUnderDrawers() {
        var design = Draft.of(shelves(Shelves.Kind.FIXED, 900, BOARD_18), draft -> {
            draft.support = PLINTH;
            draft.bays = List.of(draft.bays.get(0), bay(equal(3)));
        });

        assertThat(figure(about("bottom of bay 1", RULE, design)))
                .isGreaterThan(5 * figure(about("bottom of bay 2", RULE, design)));
    }

    /** A partition within a bay brings half of the drawers beside it down on the divider. */
    @Test
    void bringsDrawersWithinABayDownOnItsDivider() {
        var within = new Content.Divided(OptionalDouble.of(300), List.of(bay(equal(2)), bay(equal(2))));
        var below = new Content.Open(OptionalDouble.empty(), Optional.empty());
        var design = Stands.plain(draft -> draft.bays = List.of(bay(within, below)));
        var plain = Draft.of(
                design,
                draft -> draft.bays = List.of(
                        bay(new Content.EqualDrawers(2, OptionalDouble.empty(), OptionalDouble.empty()), below)));

        assertThat(figure(about("divider 1.1", RULE, design)))
                .isGreaterThan(2 * figure(about("divider 1.1", RULE, plain)));
    }

    @Test
    void findsNothingWithoutShelvesAboveAHangingBottom() {
        var screwed = Stands.plain(draft -> {
            var now = draft.carcass;
            draft.carcass = new CarcassPlan(now.sheet(), now.back(), now.housing(), now.fit(), new Joint.Screwed());
        });

        assertThat(Asked.of(RULE, screwed)).isEmpty();
    }

    private static StandDesign edged(StandDesign from, Edging.Kind kind) {
        return Draft.of(
                from,
                draft -> draft.edges =
                        new Edges(Optional.of(new Edging("edge", kind, 20)), Optional.empty(), draft.edges.worktop()));
    }

    private static StandDesign shelves(Shelves.Kind kind, double width, SheetGood carcass) {
        return Stands.plain(draft -> {
            draft.plan(width, 560);
            draft.carcass = draft.carcass.of(carcass, draft.carcass.back());
            draft.bays = List.of(bay(new Content.Open(OptionalDouble.empty(), Optional.of(new Shelves(kind, 1)))));
        });
    }

    private static SheetGood mdf() {
        return new SheetGood(
                BOARD_18.material().stiff(Board.MDF.usual()),
                BOARD_18.length(),
                BOARD_18.width(),
                BOARD_18.nominal(),
                BOARD_18.price());
    }
}
