package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.unit.Units;

/** What a finding says on paper and on a screen of text. */
public final class FindingWords {
    private FindingWords() {}

    /** How much it weighs: 'stop', or 'accepted stop' where the design says why. */
    public static String weight(Finding finding) {
        var word = finding.severity().name().toLowerCase(Locale.ROOT);
        return finding.waived().isPresent() ? "accepted " + word : word;
    }

    /** What was found, and a line each for the limit or the source, the cure and why it is accepted, as far as there are such. */
    public static List<String> lines(Finding finding, Units units) {
        var lines = new ArrayList<String>();
        lines.add(finding.message());
        lines.add(finding.gauge()
                .map(gauge -> "Limit: " + gauge.limitWords(units) + " (" + finding.source() + ").")
                .orElse("From: " + finding.source() + "."));
        finding.cure().ifPresent(cure -> lines.add(cure.sentence(units)));
        finding.waived().ifPresent(reason -> lines.add("Accepted by the maker of this design: " + reason));
        return lines;
    }
}
