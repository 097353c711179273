package org.standwright.cli;

import org.standwright.check.Finding;

/** A finding as one line. */
final class FindingLine {
    private FindingLine() {}

    static String of(Finding finding) {
        return switch (finding.severity()) {
                    case STOP -> "stop: ";
                    case CAUTION -> "caution: ";
                    case NOTE -> "note: ";
                }
                + finding.subject() + ": " + finding.message() + " (" + finding.source() + ")";
    }
}
