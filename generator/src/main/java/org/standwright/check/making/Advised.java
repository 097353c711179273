package org.standwright.check.making;

import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.RuleText;
import org.standwright.check.Severity;

/** Figures whose limits only advise: beyond them is a note, not a caution. */
final class Advised {
    private Advised() {}

    static Finding of(RuleText text, String subject, Gauge gauge, String message) {
        return gauge.severity() == Severity.FINE
                ? Finding.judged(text, subject, gauge, message)
                : new Finding(
                        Severity.NOTE,
                        text,
                        subject,
                        message,
                        Optional.of(gauge),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty());
    }
}
