package org.standwright.check.rules;

import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.RuleText;
import org.standwright.design.RuleChoice;

/** What a design decides about its rules, and which of that is no longer needed. */
final class Choices {
    private static final RuleText TEXT = RuleText.plain(
            "rule-choice", "Is each choice about a rule still needed?", "the field 'rules' of the design");

    private final List<RuleChoice> choices;

    Choices(List<RuleChoice> choices) {
        this.choices = choices;
    }

    /** A finding as strict as wanted, and accepted where somebody has to read it. */
    Finding applied(Finding finding) {
        var chosen = finding;
        for (var choice : choices) {
            if (concerns(choice, finding)) {
                chosen = chosen.tightened(choice.share());
                if (chosen.isWorthSaying() && choice.waived().isPresent()) {
                    chosen = chosen.waivedFor(choice.waived().get());
                }
            }
        }
        return chosen;
    }

    /** A note for each choice that changes nothing in these findings. */
    List<Finding> idle(List<Finding> findings) {
        return choices.stream()
                .flatMap(choice ->
                        trouble(choice, findings).stream().map(words -> Finding.note(TEXT, subject(choice), words)))
                .toList();
    }

    private static Optional<String> trouble(RuleChoice choice, List<Finding> findings) {
        var about =
                findings.stream().filter(finding -> concerns(choice, finding)).toList();
        if (choice.about().isPresent() && about.isEmpty()) {
            return Optional.of("Nothing that this rule looks at is called '"
                    + choice.about().get() + "'; this choice changes nothing.");
        }
        if (choice.waived().isPresent() && about.stream().noneMatch(Finding::isWorthSaying)) {
            return Optional.of("The accepted reason for it is no longer needed: the rule finds nothing wrong.");
        }
        boolean measured = about.stream().anyMatch(finding -> finding.gauge().isPresent());
        if (choice.share() < 1 && !measured) {
            return Optional.of("The rule measures nothing here, so a share of its limits changes nothing.");
        }
        return choice.waived().isEmpty() && choice.share() == 1
                ? Optional.of("The choice says neither a share nor a reason; it changes nothing.")
                : Optional.empty();
    }

    private static String subject(RuleChoice choice) {
        return choice.rule() + choice.about().map(about -> ", " + about).orElse("");
    }

    private static boolean concerns(RuleChoice choice, Finding finding) {
        return choice.rule().equals(finding.rule())
                && choice.about().map(finding.subject()::equals).orElse(true);
    }
}
