package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.Mount;
import org.standwright.design.Work;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;

class ChecksTest {
    private static final Stand STAND = StandBuilder.build(
            Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3)), bay(equal(3)))));

    /** Four casters under 240 kg: 80 kg each (several caster makers' guides: total over three). */
    @Test
    void letsThreeOfFourCastersCarryEverything() {
        assertThat(Load.onOneOfFour(240)).isEqualTo(80);
    }

    @Test
    void stopsWhenACasterIsOverloaded() {
        assertThat(Checks.of(STAND, 40)).noneMatch(finding -> finding.severity() == Severity.STOP);
        assertThat(Checks.of(STAND, 150))
                .filteredOn(finding -> finding.severity() == Severity.STOP)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.rule()).isEqualTo("caster-load");
                    assertThat(finding.message()).contains("it is rated for 80 kg", "or more");
                });
    }

    @Test
    void namesTheHeaviestFirst() {
        var severities = Checks.of(STAND, 150).stream().map(Finding::severity).toList();

        assertThat(severities).isSorted().startsWith(Severity.STOP).contains(Severity.CAUTION, Severity.NOTE);
    }

    @Test
    void saysThatTippingIsNotWorkedOut() {
        assertThat(Checks.of(STAND, 40)).anyMatch(finding -> finding.rule().equals("tipping"));
    }

    /** Elbow 1104 + 25 mm in shoes: light 1029 to 1079, heavy 729 to 929 (offsets by CCOHS and AUVA, as quoted). */
    @Test
    void knowsWhichHeightsSuitAnElbow() {
        double elbow = ElbowHeight.MEN + ElbowHeight.SHOES;

        assertThat(Work.LIGHT.lowest(elbow)).isEqualTo(1029);
        assertThat(Work.LIGHT.highest(elbow)).isEqualTo(1079);
        assertThat(Work.HEAVY.lowest(elbow)).isEqualTo(729);
        assertThat(Work.HEAVY.highest(elbow)).isEqualTo(929);
        assertThat(Checks.of(STAND, 40))
                .filteredOn(finding -> finding.rule().equals("elbow-height"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("729 to 929 mm", "647 to 847 mm"));
    }
}
