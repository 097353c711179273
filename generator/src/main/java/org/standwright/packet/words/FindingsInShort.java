package org.standwright.packet.words;

import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.Severity;

/** The findings in a sentence on the first page. */
public final class FindingsInShort {
    private FindingsInShort() {}

    /** What nobody should overlook who only reads this page. */
    public static Optional<String> of(List<Finding> findings) {
        long stops = findings.stream().filter(Finding::isStop).count();
        long accepted = findings.stream()
                .filter(finding -> finding.severity() == Severity.STOP && !finding.isStop())
                .count();
        long cautions = findings.stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .count();
        if (stops + accepted + cautions == 0) {
            return Optional.empty();
        }
        return Optional.of(
                (stops > 0 ? "DO NOT BUILD IT LIKE THIS: the checks say " + Counted.of(stops, "stop") + ". " : "")
                        + (accepted > 0
                                ? "The maker of this design accepted " + Counted.of(accepted, "stop")
                                        + " for the reason given there. "
                                : "")
                        + "The checks have " + Counted.of(cautions, "caution") + "; read the findings before you cut.");
    }
}
