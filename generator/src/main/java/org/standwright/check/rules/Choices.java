package org.standwright.check.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
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

    /** A finding as strict as the strictest choice wants it, and accepted where somebody has to read it. */
    Finding applied(Finding finding) {
        var about = choices.stream().filter(choice -> concerns(choice, finding)).toList();
        double share = about.stream().mapToDouble(RuleChoice::share).min().orElse(1);
        var strict = share < 1 ? finding.tightened(share) : finding;
        return strict.isWorthSaying()
                ? about.stream()
                        .flatMap(choice -> choice.waived().stream())
                        .findFirst()
                        .map(strict::waivedFor)
                        .orElse(strict)
                : strict;
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
            var known = findings.stream()
                    .filter(finding -> finding.rule().equals(choice.rule()))
                    .map(finding -> "'" + finding.subject() + "'")
                    .distinct()
                    .collect(Collectors.joining(", "));
            return Optional.of("Nothing that this rule looks at is called '"
                    + choice.about().get()
                    + "', so this choice changes nothing. "
                    + (known.isEmpty() ? "It looks at nothing here." : "It looks at " + known + "."));
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
