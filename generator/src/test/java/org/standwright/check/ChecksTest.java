package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.RuleChoice;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.Support;
import org.standwright.design.Work;
import org.standwright.design.support.Castered;
import org.standwright.unit.Units;

class ChecksTest {
    /** Fixed to a wall, so that it does not tip. */
    private static final StandDesign DESIGN = Draft.of(
            Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3)), bay(equal(3)))),
            draft -> draft.steady = Steady.BY_ITSELF.anchored(Steady.Anchor.WALL));

    private static final StandDesign WEAK = Draft.of(
            DESIGN,
            draft -> draft.support = new Support.Casters(
                    Castered.rated(Designs.CASTERS.caster(), 10), Optional.empty(), Support.Bed.STRIPS));

    /** Four casters rated for 10 kg each bear no stand. */
    @Test
    void stopsWhenACasterIsOverloaded() {
        assertThat(Stands.stops(DESIGN)).isEmpty();
        assertThat(Stands.stops(WEAK)).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo("foot-load");
            assertThat(finding.sentences(Units.MM)).contains("Limit: at most 10 kg.");
        });
    }

    @Test
    void namesTheHeaviestFirst() {
        var severities = Stands.all(WEAK).stream().map(Finding::severity).toList();

        assertThat(severities).isSorted().startsWith(Severity.STOP).contains(Severity.CAUTION, Severity.NOTE);
    }

    /** A share of 0.5 halves the limit of 80 kg. */
    @Test
    void isAsStrictAsTheDesignWants() {
        var strict = Draft.of(DESIGN, draft -> draft.rules = List.of(choice(0.1, Optional.empty())));

        assertThat(Stands.stops(strict))
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentences(Units.MM)).contains("Limit: at most 8 kg."));
    }

    @Test
    void acceptsAStopForAWrittenReason() {
        var accepted = Draft.of(
                WEAK, draft -> draft.rules = List.of(choice(1, Optional.of("It stands on blocks, never on these."))));

        assertThat(Stands.stops(accepted)).isEmpty();
        assertThat(Stands.found(accepted, "foot-load")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.sentences(Units.MM)).endsWith("Accepted: It stands on blocks, never on these.");
        });
    }

    @Test
    void acceptsOnlyWhatTheChoiceIsAbout() {
        var other = Draft.of(
                WEAK,
                draft -> draft.rules = List.of(new RuleChoice(
                        "foot-load", Optional.of("leveler M10"), 1, Optional.of("These are never loaded."))));

        assertThat(Stands.stops(other)).hasSize(1);
    }

    private static RuleChoice choice(double share, Optional<String> waived) {
        return new RuleChoice("foot-load", Optional.empty(), share, waived);
    }

    /** Elbow 1104 + 25 mm in shoes: light 1029 to 1079, heavy 729 to 929 (offsets by CCOHS and AUVA, as quoted). */
    @Test
    void knowsWhichHeightsSuitAnElbow() {
        double elbow = 1104 + 25;

        assertThat(Work.LIGHT.lowest(elbow)).isEqualTo(1029);
        assertThat(Work.LIGHT.highest(elbow)).isEqualTo(1079);
        assertThat(Work.HEAVY.lowest(elbow)).isEqualTo(729);
        assertThat(Work.HEAVY.highest(elbow)).isEqualTo(929);
        assertThat(Stands.all(DESIGN))
                .filteredOn(finding -> finding.rule().equals("elbow-height"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("729 to 929 mm", "647 to 847 mm"));
    }
}
