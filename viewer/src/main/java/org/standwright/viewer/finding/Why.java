package org.standwright.viewer.finding;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.unit.Units;

/** How a rule comes to what it says, in lines of words. */
final class Why {
    /**
     * One line.
     *
     * @param word what it is: 'formula', or an input's symbol
     */
    record Line(String word, String text) {}

    private Why() {}

    static List<Line> of(Finding finding, Units units) {
        var rule = finding.text();
        var lines = new ArrayList<Line>();
        lines.add(new Line("asks", rule.question()));
        lines.add(new Line("formula", rule.formula().isEmpty() ? "nothing is worked out" : rule.formula()));
        finding.inputs()
                .forEach(input -> lines.add(new Line(input.symbol(), "= " + input.words(units) + ", " + input.what())));
        finding.gauge().ifPresent(gauge -> {
            lines.add(new Line("figure", gauge.figureWords(units)));
            lines.add(new Line("limit", gauge.limitWords(units)));
            lines.add(new Line("used", gauge.usedWords() + " of the limit"));
        });
        lines.add(new Line("taken", rule.assumptions().isEmpty() ? "nothing for granted" : rule.assumptions()));
        lines.add(new Line("source", rule.source()));
        lines.add(new Line("rule", rule.name()));
        return lines;
    }
}
