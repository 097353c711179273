package org.standwright.design;

import java.util.Optional;

/**
 * What a maker decided about one rule of the checks.
 *
 * @param rule its name
 * @param about the subject that it concerns; without it, whatever the rule looks at
 * @param share how much of the rule's limits may be used, above 0 to 1; less than 1 is stricter
 * @param waived why a finding of this rule is accepted as it is
 */
public record RuleChoice(String rule, Optional<String> about, double share, Optional<String> waived) {}
