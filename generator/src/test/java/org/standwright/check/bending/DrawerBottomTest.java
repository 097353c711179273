package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.standwright.check.bending.Asked.about;
import static org.standwright.check.bending.Asked.cured;
import static org.standwright.check.bending.Asked.figure;
import static org.standwright.check.bending.Asked.of;
import static org.standwright.check.bending.Asked.severity;
import static org.standwright.design.Designs.BOARD_12;
import static org.standwright.design.Designs.BOARD_6;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.Draft;
import org.standwright.design.Loads;
import org.standwright.design.StandDesign;
import org.standwright.part.SheetGood;

class DrawerBottomTest {
    private static final DrawerBottomSag SAG = new DrawerBottomSag();
    private static final BottomGroove GROOVE = new BottomGroove();

    /** Roark, table 11.4, case 1a: alpha q b⁴ / (E t³), 0.0641 between 0.0616 for 1.2 and 0.0770 for 1.4. */
    @Test
    void sagsAsRoarksTableSays() {
        var design = drawers(720, BOARD_6);
        var bottom = DrawerBottom.of(Stands.loaded(design)).get(2);
        double longer = Math.max(bottom.plate().overX(), bottom.plate().overY());
        double shorter = Math.min(bottom.plate().overX(), bottom.plate().overY());
        double ratio = longer / shorter;
        double alpha = ratio < 1.2
                ? 0.0444 + (ratio - 1) / 0.2 * (0.0616 - 0.0444)
                : 0.0616 + (ratio - 1.2) / 0.2 * (0.0770 - 0.0616);
        double load = 500e-9 * bottom.drawer().inside().height() * 9.80665 + 680e-9 * 6 * 9.80665;

        assertThat(bottom.sag()).isCloseTo(1.8 * alpha * load * Math.pow(shorter, 4) / (3000 * 216), withPercentage(2));
    }

    @Test
    void passesNarrowDrawersAndNotesWideOnes() {
        assertThat(worst(SAG, drawers(340, BOARD_6)).severity()).isEqualTo(Severity.FINE);
        assertThat(worst(SAG, drawers(720, BOARD_6)).severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void stopsABottomThatComesDownOnWhatIsBelow() {
        var heavy = Draft.of(
                drawers(1100, sheet("board 3", 3, 2440, 1220)), draft -> draft.loads = new Loads(1500, 195, 750, 150));

        assertThat(worst(SAG, heavy).severity()).isEqualTo(Severity.STOP);
        assertThat(worst(SAG, heavy).message()).contains("Past half of its thickness the theory says too much.");
    }

    @Test
    void isCuredByThickerBottomsAndByNarrowerBays() {
        var wide = drawers(720, BOARD_6);
        var finding = worst(SAG, wide);

        assertThat(finding.remedies())
                .extracting(remedy -> remedy.words())
                .containsExactly("the drawer bottoms of board 12", "bay 1 in two halves with a partition");
        assertThat(worst(SAG, cured("bottoms", finding, wide)).severity()).isEqualTo(Severity.FINE);
        assertThat(worst(SAG, cured("halves", finding, wide)).severity()).isEqualTo(Severity.FINE);
    }

    /** Groove 6 mm deep and 10 mm above the lower edge, half a millimetre of play. */
    @Test
    void measuresTheGroove() {
        var design = drawers(720, BOARD_6);

        assertThat(figure(about("drawer bottoms in their grooves", GROOVE, design)))
                .isCloseTo(5.5, withPercentage(1e-6));
        assertThat(figure(about("wood below the grooves", GROOVE, design))).isCloseTo(10, withPercentage(1e-6));
        assertThat(of(GROOVE, design)).extracting(Finding::severity).containsOnly(Severity.FINE);
    }

    @Test
    void wantsAsMuchWoodBelowTheGrooveAsTheBottomIsThick() {
        assertThat(severity("wood below the grooves", GROOVE, drawers(720, BOARD_12)))
                .isEqualTo(Severity.CAUTION);
    }

    /** gamma q b between 0.42 and 0.505 q b over the lip of 10 mm, Roark table 11.4. */
    @Test
    void shearsTheWoodBelowTheGroove() {
        var bottom = DrawerBottom.of(Stands.loaded(drawers(720, BOARD_6))).get(2);
        double line = bottom.pressure() * bottom.plate().shorter();

        assertThat(bottom.lipShear()).isBetween(1.5 * 0.42 * line / 10, 1.5 * 0.505 * line / 10);
        var dense = Draft.of(drawers(720, BOARD_6), draft -> draft.loads = new Loads(50_000, 195, 750, 150));
        assertThat(of(GROOVE, dense).get(0).severity()).isEqualTo(Severity.CAUTION);
    }

    private static Finding worst(DrawerBottomSag rule, StandDesign design) {
        return of(rule, design).get(0);
    }

    private static StandDesign drawers(double width, SheetGood bottom) {
        return Stands.plain(draft -> {
            draft.plan(width, 560);
            draft.bays = List.of(bay(equal(3)));
            draft.drawers = draft.drawers.of(draft.drawers.box(), bottom, draft.drawers.front());
        });
    }
}
