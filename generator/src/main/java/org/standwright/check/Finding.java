package org.standwright.check;

/**
 * Something that a rule has to say about a design.
 *
 * @param rule short name of the rule, as in {@code caster-load}
 * @param subject the part or place it is about
 * @param message the figure, its limit and what to do
 * @param source where the limit comes from
 */
public record Finding(Severity severity, String rule, String subject, String message, String source) {}
