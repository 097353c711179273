package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Hardware;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.design.Loads;
import org.standwright.design.Worktop;
import org.standwright.design.kit.WorkingForce;
import org.standwright.part.Board;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;

class WorktopScrewsTest {
    private static final WorktopScrews RULE = new WorktopScrews();

    /** #6, G 0.42: 12.150 N/mm of NDS Table 12.2B, 27 mm of thread, 1.6 for ten minutes: 524.9 N. */
    @Test
    void holdsAStandThatIsLifted() {
        var plain = Stands.plain(draft -> {});

        assertThat(Asked.of(RULE, plain))
                .containsExactly("FINE worktop: Lifted full by one edge of its worktop, the stand draws with 105.7 N "
                        + "on each screw that carries it, half of 12, with 27 mm of thread in the worktop.");
        assertThat(Asked.limit(RULE, Stands.loaded(plain))).isEqualTo("at most 524.9 N, a stop above 1807.1 N");
    }

    @Test
    void warnsOfOneFullOfLead() {
        var heavy = Stands.plain(draft -> draft.loads = new Loads(11_000, 195, 750, 150));

        assertThat(Asked.of(RULE, heavy))
                .containsExactly("CAUTION worktop: Lifted full by one edge of its worktop, the stand draws with 1504 N "
                        + "on each screw that carries it, half of 12, with 27 mm of thread in the worktop.");
    }

    /** 15,700 G² D of the Wood Handbook, 66.94 N/mm for 27 mm: 1807 N. */
    @Test
    void stopsOneFullOfGold() {
        var heavier = Stands.plain(draft -> draft.loads = new Loads(19_300, 195, 750, 150));

        assertThat(Asked.of(RULE, heavier))
                .containsExactly("STOP worktop: Lifted full by one edge of its worktop, the stand draws with 2609.4 N "
                        + "on each screw that carries it, half of 12, with 27 mm of thread in the worktop.");
    }

    @Test
    void asksForWhatTheWorkTips() {
        var pulled = Stands.withMachine(machine -> machine.workingForce = Optional.of(new WorkingForce(2000, 500)));

        assertThat(Asked.of(RULE, pulled))
                .containsExactly(
                        "CAUTION worktop: The work at the machine draws with 591.6 N on each screw at one edge, "
                                + "with 27 mm of thread in the worktop.");
    }

    @Test
    void stopsScrewsThatDoNotReachIt() {
        var thin = Altered.hardware(
                Stands.plain(draft -> {}), new Hardware("screw 4 x 16 mm", 12, "worktop, from inside"));

        assertThat(Asked.of(RULE, thin)).containsExactly("STOP worktop: Its screws do not reach beyond the sub-top.");
    }

    @Test
    void ratesNoScrewInFibreboard() {
        var fibreboard = Stands.plain(draft ->
                draft.worktop = new Worktop(mdf(draft.worktop.sheet()), 2, draft.worktop.overhang(), Optional.empty()));

        assertThat(Asked.of(RULE, fibreboard))
                .singleElement()
                .asString()
                .startsWith("NOTE worktop: Lifted full")
                .endsWith("Screws in this wood are not rated.");
    }

    @Test
    void stopsAWorktopThatNothingHolds() {
        var loose = Altered.part(
                Stands.plain(draft -> {}),
                "sub-top",
                part -> new Part(
                        part.name(),
                        part.material(),
                        part.length(),
                        part.width(),
                        part.oversize(),
                        part.bands(),
                        List.of()));

        assertThat(Asked.of(RULE, loose)).containsExactly("STOP worktop: No screw holds it down.");
    }

    private static SheetGood mdf(SheetGood sheet) {
        return new SheetGood(
                sheet.material().stiff(Board.MDF.usual()),
                sheet.length(),
                sheet.width(),
                sheet.nominal(),
                sheet.price());
    }
}
