package org.standwright.viewer.finding;

import java.util.Optional;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.viewer.Examples;

/** Findings made up for the tests. */
final class Made {
    static final RuleText SAG =
            new RuleText("top-sag", "Does the top sag?", "f = 5 q L^4 / (384 E I)", "Simply supported.", "statics");

    private Made() {}

    static Finding note(String subject) {
        return Finding.note(SAG, subject, "A note about " + subject + ".");
    }

    static Finding caution(String subject) {
        return Finding.caution(SAG, subject, "A caution about " + subject + ".");
    }

    static Finding stop(String subject) {
        return Finding.stop(SAG, subject, "A stop about " + subject + ".");
    }

    static Finding sag(double figure) {
        return Finding.judged(
                        SAG,
                        "worktop",
                        new Gauge(Quantity.SAG, figure, Limit.atMost(0.5, 1.5)),
                        "It sags " + figure + " mm.")
                .with(new Input("L", "span", Quantity.LENGTH, 700));
    }

    static Finding cured(double figure) {
        return sag(figure)
                .cured(Cure.whole(
                        "a second worktop layer",
                        Examples.planerStand().furniture().design(),
                        Optional.empty()));
    }
}
