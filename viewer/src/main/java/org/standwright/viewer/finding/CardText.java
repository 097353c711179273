package org.standwright.viewer.finding;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.unit.Units;

/**
 * All that a card shows of a finding. Two are equal when their cards look alike, whatever designs they are about.
 *
 * @param part what it is about, where that is a part
 */
record CardText(Finding finding, Units units, Optional<String> part, String sentences, List<Why.Line> why) {
    static CardText of(Finding finding, Units units, Optional<String> part) {
        return new CardText(finding, units, part, finding.sentences(units), Why.of(finding, units));
    }

    Weight weight() {
        return Weight.of(finding.severity());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CardText text
                && finding.severity() == text.finding.severity()
                && finding.subject().equals(text.finding.subject())
                && units == text.units
                && part.equals(text.part)
                && sentences.equals(text.sentences)
                && why.equals(text.why);
    }

    @Override
    public int hashCode() {
        return Objects.hash(finding.severity(), finding.subject(), units, part, sentences, why);
    }
}
