package org.standwright.cli;

import org.standwright.check.Finding;
import org.standwright.unit.Units;

/** A finding as one line. */
final class FindingLine {
    private FindingLine() {}

    static String of(Finding finding, Units units) {
        return switch (finding.severity()) {
                    case STOP -> "stop: ";
                    case CAUTION -> "caution: ";
                    case NOTE -> "note: ";
                    case FINE -> "fine: ";
                }
                + finding.subject() + ": " + finding.sentences(units) + " (" + finding.source() + ")";
    }
}
