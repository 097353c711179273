package org.standwright.check.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.RuleText;

/**
 * What one rule answers about one piece of furniture.
 *
 * @param findings all of this rule; none where it does not concern it or has nothing to say
 */
public record Answer(RuleText rule, List<Finding> findings) {
    public Answer {
        findings = List.copyOf(findings);
    }

    /** The findings rule by rule, every rule once: in the order of the rules, then what else there is. */
    public static List<Answer> of(List<Finding> findings, List<RuleText> rules) {
        var texts = new LinkedHashMap<String, RuleText>();
        rules.forEach(rule -> texts.put(rule.name(), rule));
        findings.forEach(finding -> texts.putIfAbsent(finding.rule(), finding.text()));
        return texts.values().stream()
                .map(text -> new Answer(
                        text,
                        findings.stream()
                                .filter(finding -> finding.rule().equals(text.name()))
                                .toList()))
                .toList();
    }

    /** The heaviest of what it measured, and of several the one that uses most of its limit. */
    public Optional<Finding> measured() {
        return findings.stream()
                .filter(finding -> finding.gauge().isPresent())
                .min(Comparator.comparing(Finding::severity)
                        .thenComparing(
                                finding -> -finding.gauge().map(Gauge::used).orElse(0.0)));
    }

    /** What it says without having measured it. */
    public List<Finding> unmeasured() {
        var plain = new ArrayList<>(findings);
        plain.removeIf(finding -> finding.gauge().isPresent());
        return List.copyOf(plain);
    }
}
