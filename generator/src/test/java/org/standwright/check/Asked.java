package org.standwright.check;

import java.util.List;
import org.standwright.design.StandDesign;

/** What one rule says about a stand, all that is fine included. */
public final class Asked {
    private Asked() {}

    public static List<String> of(Rule<LoadedStand> rule, StandDesign design) {
        return of(rule, Stands.loaded(design));
    }

    /** As 'STOP drawer 1.1: It weighs 50 kg.', the limit left out. */
    public static List<String> of(Rule<LoadedStand> rule, LoadedStand stand) {
        return rule.check(stand).stream()
                .map(finding -> finding.severity() + " " + finding.subject() + ": " + finding.message())
                .toList();
    }

    /** What the first of its findings is measured against. */
    public static String limit(Rule<LoadedStand> rule, LoadedStand stand) {
        return rule.check(stand).get(0).gauge().orElseThrow().limitWords(stand.units());
    }
}
