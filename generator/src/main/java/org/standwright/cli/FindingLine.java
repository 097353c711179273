package org.standwright.cli;

import org.standwright.check.Finding;
import org.standwright.packet.words.FindingWords;
import org.standwright.unit.Units;

/** A finding as one line. */
final class FindingLine {
    private FindingLine() {}

    static String of(Finding finding, Units units) {
        return FindingWords.weight(finding) + ": " + finding.subject() + ": " + finding.sentences(units) + " ("
                + finding.rule() + "; " + finding.source() + ")";
    }
}
