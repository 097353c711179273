package org.standwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.Stand;

/** What else is different in a changed stand, besides what was changed. */
final class Differences {
    private Differences() {}

    static List<String> between(Stand before, Stand after, Trials trials) {
        var words = new ArrayList<String>();
        int then = drawers(after).size();
        int now = drawers(before).size();
        if (then != now) {
            words.add(then + (then == 1 ? " drawer" : " drawers") + " instead of " + now);
        }
        var units = before.design().unit();
        var deep = deepest(after);
        var deeper = deepest(before);
        if (deep.isPresent() && deeper.isPresent() && !same(before, deep, deeper)) {
            words.add("drawer boxes " + units.length(deep.getAsDouble()) + " deep instead of "
                    + units.length(deeper.getAsDouble()));
        }
        var known = cautions(trials.findings(before));
        cautions(trials.findings(after)).stream()
                .filter(caution -> !known.contains(caution))
                .distinct()
                .forEach(caution -> words.add("a new caution about " + caution));
        return words;
    }

    /** Whether two lengths are shown alike. */
    private static boolean same(Stand stand, OptionalDouble a, OptionalDouble b) {
        var units = stand.design().unit();
        return units.length(a.getAsDouble()).equals(units.length(b.getAsDouble()));
    }

    private static List<DrawerLayout> drawers(Stand stand) {
        return stand.bays().stream().flatMap(bay -> bay.drawers().stream()).toList();
    }

    private static OptionalDouble deepest(Stand stand) {
        return drawers(stand).stream()
                .mapToDouble(drawer -> drawer.box().depth())
                .max();
    }

    private static List<String> cautions(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .map(Differences::words)
                .toList();
    }

    private static String words(Finding finding) {
        return finding.subject() + " (" + finding.rule() + ")";
    }
}
