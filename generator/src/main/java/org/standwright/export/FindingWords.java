package org.standwright.export;

import org.standwright.check.Finding;

/** How much a finding weighs, in a word. */
final class FindingWords {
    private FindingWords() {}

    /** 'stop', or 'accepted stop' where its maker wrote down why. */
    static String weight(Finding finding) {
        var word = JsonShapes.word(finding.severity());
        return finding.waived().isPresent() ? "accepted " + word : word;
    }
}
