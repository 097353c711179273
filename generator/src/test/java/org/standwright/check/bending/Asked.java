package org.standwright.check.bending;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.StandDesign;

/** What one rule says of a design. */
final class Asked {
    private Asked() {}

    static List<Finding> of(Rule<LoadedStand> rule, StandDesign design) {
        return rule.check(Stands.loaded(design));
    }

    /** The finding about one subject. */
    static Finding about(String subject, Rule<LoadedStand> rule, StandDesign design) {
        return of(rule, design).stream()
                .filter(finding -> finding.subject().equals(subject))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing about '" + subject + "' in " + of(rule, design)));
    }

    static double figure(Finding finding) {
        return finding.gauge().orElseThrow().figure();
    }

    static Severity severity(String subject, Rule<LoadedStand> rule, StandDesign design) {
        return about(subject, rule, design).severity();
    }

    /** The design with the first of a finding's changes whose words contain these. */
    static StandDesign cured(String words, Finding finding, StandDesign design) {
        return finding.remedies().stream()
                .filter(remedy -> remedy.words().contains(words))
                .findFirst()
                .map(remedy -> Stands.changed(design, remedy))
                .orElseThrow();
    }
}
